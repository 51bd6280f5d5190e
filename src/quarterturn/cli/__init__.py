"""the command line."""
