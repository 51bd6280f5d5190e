"""the ordered operations."""
