# Hazards: what it is, what it does, what to wear or do. Shown before the work.
hazard-turning-gears = Turning gears draw fingers in. Keep hands, rags and sleeves out of the mesh; turn by the flange.
hazard-solvent = Solvent irritates skin and eyes, and its vapor burns. Wear eye protection and gloves, open the door, keep flames and sparks away.
hazard-puller = A puller under load can slip or break. Stand to one side and cover the part.
hazard-ring-under-press = A hardened ring under the press can burst. Close the guard and stand clear.
hazard-splinters = Steel chips and driven tools throw splinters. Wear eye protection.
hazard-air-spun-bearing = A bearing spun by compressed air can fly apart. Hold it still while you dry it.
hazard-heavy-part = The part is heavy and falls on hands and feet. Use a hoist or a second pair of hands.
hazard-spread-housing = A spread housing closes on fingers when the spreader slips. Keep hands out of the opening; never spread more than the maker allows.
hazard-nut-reaction = The flange turns with the full torque of the nut. Rest the holding bar on the bench and keep hands out of its way.
hazard-multiplier-arm = The arm of a torque multiplier swings against its stop. Keep hands away from arm and stop.
hazard-bolt-torque = A wrench that slips off a tight bolt injures the hand. Seat the socket fully, pull, never push.
hazard-hot-ring-gear = A hot ring gear burns skin and looks like a cold one; hot oil smokes and can catch fire. Wear hot gloves, use no open flame, and leave it marked as hot.
hazard-grinding = Stoning and grinding throw grit and sparks. Wear eye protection and keep grit out of the bearings.
hazard-marking-compound = Marking compound irritates skin and eyes. Wear gloves and wash your hands afterward.
hazard-sharp-shims = Shims have sharp edges. Hold them flat and wear gloves when you sort them.
hazard-sharp-edges = Gear teeth and machined edges cut. Wear gloves when you carry the part.
