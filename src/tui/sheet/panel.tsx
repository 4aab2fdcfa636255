/** What fills the screen over a question or a result: its picture, or all that the drill says, to read it again. */
import { Text } from 'ink';
import { sceneTexts, type Told } from '../drill/scene.js';
import type { Command } from '../kit/keys.js';
import { pageColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import { type Page, scrolled } from '../kit/page.js';
import type { View } from '../kit/program.js';
import type { Stage, World } from '../kit/stage.js';
import { TextPage } from '../kit/text-page.js';
import { drillTitle } from '../practice/titles.js';
import { drillIn, isJudged, onSheet, type Pictured, type SheetPanel } from './keys.js';
import { sheetView } from './view.js';

/** Scene, question and goal, and the hint where it is shown, a blank line between. */
function scenePage(state: Stage, world: World, shown: Pictured): Page {
  // A column for the sign that more follows.
  const columns = pageColumns(state.size);
  const told: Told = isJudged(shown) ? { drill: shown.answered.drill, hint: 'hidden' } : shown;
  const { message, scene, ask, goal, hint } = sceneTexts(told, world, columns, voiceOf(state.settings));
  const lines = [message, scene, ask, goal, hint]
    .filter((part) => part.length > 0)
    .flatMap((part, at) => [
      ...(at === 0 ? [] : ['']),
      ...part.map((line) => line.map(({ text }) => text).join('')),
    ]);
  return { lines, rows: bodyRows(state) };
}

/** A key while a panel is open: it changes what is shown, scrolls, or goes back; without a panel it is closed. */
export function onPanel<P extends Pictured>(
  state: Stage,
  world: World,
  shown: P,
  panel: SheetPanel,
  command: Command | undefined,
): { readonly shown: P; readonly panel?: SheetPanel } {
  if (panel.name === 'sheet') {
    const changed = command === undefined ? undefined : onSheet(shown, command, () => true);
    return changed === undefined ? { shown } : { ...changed, panel };
  }
  if (command === undefined || command === 'back') return { shown };
  return {
    shown,
    panel: { name: 'scene', top: scrolled(scenePage(state, world, shown), panel.top, command) },
  };
}

/** The panel; undefined for the picture of a drill that has none. */
export function panelView(state: Stage, world: World, shown: Pictured, panel: SheetPanel): View | undefined {
  if (panel.name === 'sheet') return sheetView(state, world, shown);
  const page = scenePage(state, world, shown);
  return {
    title: drillTitle(world, { drill: drillIn(shown) }),
    body: state.settings.screenReader ? (
      page.lines.filter(Boolean).map((line) => <Text key={line}>{line}</Text>)
    ) : (
      <TextPage page={page} top={panel.top} />
    ),
  };
}
