"""From points and traces on terrain to planes, and from known planes to what they say elsewhere."""
