"""Timings: from edit to plan, a whole publish, the bare command, and each stage's share. Run by ./bench."""
