"""Timings of the stages on designs of several sizes; run by ./bench."""
