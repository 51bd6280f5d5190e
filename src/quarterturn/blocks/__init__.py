"""units."""
