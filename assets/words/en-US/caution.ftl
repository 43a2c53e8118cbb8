# The note that goes with everything that is computed, and its heading on a page.
caution-simulated = Simulated values are never a specification for a real axle. The maker’s service information, local codes, and qualified practice come first.
caution-heading = Caution
