"""The checks of the technical edit, a module for each group.

In:  a `Pattern`.
Out: findings.
Promise: each check calculates anew, from parts that do not depend on what it checks; a sound design passes all.
"""
