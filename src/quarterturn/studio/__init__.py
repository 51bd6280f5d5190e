"""Door two: the studio, a page in the browser in which a design is made by hand."""
