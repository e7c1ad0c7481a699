"""From the map to the section: profile, attitudes, contacts, and the drawn figure."""
