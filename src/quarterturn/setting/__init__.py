"""the quilt top."""
