"""the plans."""
