# Hazards: what it is, what it does, what to wear or do. Shown before the work.
hazard-turning-gears = Turning gears draw fingers in. Keep hands, rags and sleeves out of the mesh; turn by the flange.
hazard-solvent = Solvent splashes burn the eyes, and its vapor is harmful and catches fire. Wear eye protection and gloves, ventilate the room, and keep flames and sparks away.
hazard-puller = A puller under load can slip or break. Stand to one side and cover the part.
hazard-ring-under-press = A hardened cup or cone can burst under the press and throw fragments. Close the press guard and stand clear.
hazard-splinters = Steel driven on hardened steel throws splinters that can blind you. Wear eye protection.
hazard-air-spun-bearing = A bearing spun by compressed air can fly apart and throw its rollers. Hold the bearing still.
hazard-heavy-part = The part is heavy and its edges are sharp: it crushes and cuts hands and feet. Lift it with the hoist.
hazard-spread-housing = A spread housing closes on fingers when the spreader slips. Keep hands out of the opening; never spread more than the maker allows.
hazard-nut-reaction = The flange takes the full torque of the nut: a loose holding bar swings around and breaks bones. Rest the holding bar on the bench.
hazard-multiplier-arm = The arm of a torque multiplier swings against its stop. Keep hands away from arm and stop.
hazard-bolt-torque = A wrench that slips off a tight bolt injures the hand. Seat the socket fully, pull, never push.
hazard-hot-ring-gear = A hot ring gear burns skin at a touch and looks like a cold one, and its oil smokes. Wear heat-resistant gloves, use no open flame, and mark it as hot.
hazard-grinding = Stoning and grinding throw grit and sparks. Wear eye protection and keep grit out of the bearings.
hazard-marking-compound = Marking compound irritates skin and eyes. Wear gloves and wash your hands afterward.
hazard-sharp-shims = Shims have sharp edges. Hold them flat and wear gloves when you sort them.
hazard-sharp-edges = Gear teeth and machined edges cut. Wear gloves when you carry the part.
