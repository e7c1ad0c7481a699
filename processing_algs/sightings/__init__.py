"""From bearings and vertical angles to places, heights and the state of the compass."""
