# The caution that goes with everything that is computed.
caution-simulated = Simulated values are never a specification for a real axle.
caution-heading = Caution
caution-whole = Simulated values are never a specification for a real axle. The maker’s service information, local codes, and qualified practice come first.
