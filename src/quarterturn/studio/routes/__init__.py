"""The addresses of the studio, by what they concern; each only asks the desk, the views and the press."""
