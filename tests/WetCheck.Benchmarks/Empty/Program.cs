// A program that does nothing: what starting one costs by itself.
return;
