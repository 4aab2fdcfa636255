/** `mudlark painting` on the screen: the ports of its program. */
import { findFamily } from '../drills/families.js';
import { type Drill, kindOf } from '../drills/kinds/index.js';
import type { Kind } from '../drills/types.js';
import type { Studio } from '../paints/index.js';
import { colourLevel } from '../tui/kit/colour-level.js';
import type { Settings } from '../tui/kit/stage.js';
import { runPhotograph } from '../tui/photograph/program.js';
import { type Paintings, toldOf } from './painting.js';

/** @returns the exit code */
export function showPainting(
  studio: Studio,
  paintings: Paintings,
  settings: Settings,
  noColourFlag: boolean,
): Promise<number> {
  const { env } = process;
  const voice = { scale: settings.valueScale, spoken: settings.screenReader };
  return runPhotograph({
    world: {
      studio,
      kindOf: (drill) => kindOf(studio, drill as Drill) as unknown as Kind,
      familyName: (id) => findFamily(id)?.name ?? id,
      // No drill is shown here.
      sceneOf: () => undefined,
      colourLevelFor: (setting) => colourLevel({ env, setting, noColourFlag }),
    },
    settings,
    env,
    paintings: paintings.read.flatMap((one) => one ?? []),
    told: toldOf(studio, paintings, voice),
    tray: paintings.tray,
    now: () => Date.now(),
  });
}
