/** The picture of a drill beside its text, in colours and in the greys of the value check: for pages that authors look at. */
import type { Drill } from '../drills/kinds/index.js';
import type { Answer } from '../drills/types.js';
import type { Studio } from '../paints/index.js';
import { html, type Markup } from '../text/html.js';
import { painted } from './covering.js';
import { drillScenes } from './scene.js';
import { svg } from './svg.js';
import type { Picture } from './types.js';
import { findPicture } from './where.js';

/** Markup of the two; nothing for a drill without a picture. @param answer what lies in the passage */
export function pictureBeside(
  studio: Studio,
  pictures: readonly Picture[],
  drill: Drill,
  answer: Answer,
): Markup {
  const picture = findPicture(pictures, drill.picture);
  if (picture === undefined) return html``;
  const scene = drillScenes(studio, pictures)(drill, answer);
  const shown = scene?.painted ?? painted(studio, picture);
  const prefix = `in-${drill.id}`;
  const pair = html`<div class="scene">${svg(shown, { prefix })}${svg(shown, { prefix: `${prefix}-grey`, inGrey: true })}</div>`;
  return scene === undefined
    ? html`${pair}<p class="figures">Nothing of this drill lies in its picture: it is in its own colours, and no learner is shown it.</p>`
    : pair;
}
