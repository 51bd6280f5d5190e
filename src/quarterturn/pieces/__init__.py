"""the bill."""
