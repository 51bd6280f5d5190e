"""the checks and the rehearsal."""
