"""text to Design."""
