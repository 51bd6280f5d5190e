"""the files."""
