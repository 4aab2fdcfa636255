/** What a drill says, in full: for screens on which its scene has no room, and to read it again beside its result. */
import { Text } from 'ink';
import { Frame } from '../kit/frame.js';
import type { Command } from '../kit/keys.js';
import { frameParts, textColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { withOverlay, withoutOverlay } from '../kit/moves.js';
import { notesOf } from '../kit/notes.js';
import { type Page, scrolled } from '../kit/page.js';
import type { State, World } from '../kit/state.js';
import { useSurroundings } from '../kit/surroundings.js';
import { TextPage } from '../kit/text-page.js';
import { drillTitle } from '../kit/titles.js';
import { sceneTexts, type Told } from './scene.js';

/** The drill of a screen, as far as its text goes; undefined on other screens. */
function toldOn({ screen }: State): Told | undefined {
  if (screen.name === 'drill') return screen;
  if (screen.name !== 'result') return undefined;
  return { drill: screen.attempt.entry.drill, worked: screen.worked, hint: 'hidden' };
}

/** Scene, question and goal, and the hint where it is shown, a blank line between. */
function scenePage(state: State, world: World, told: Told): Page {
  // A column for the sign that more follows.
  const columns = textColumns(state.size) - 2;
  const { message, scene, ask, goal, hint } = sceneTexts(told, world, columns, voiceOf(state.settings));
  const lines = [message, scene, ask, goal, hint]
    .filter((part) => part.length > 0)
    .flatMap((part, at) => [
      ...(at === 0 ? [] : ['']),
      ...part.map((line) => line.map(({ text }) => text).join('')),
    ]);
  return { lines, rows: frameParts(state, notesOf(state).length).body };
}

/** A key while the text is open: it scrolls, or goes back. */
export function onSceneKey(state: State, world: World, command: Command): State {
  const told = toldOn(state);
  if (state.overlay?.name !== 'scene' || told === undefined || command === 'back')
    return withoutOverlay(state);
  const top = scrolled(scenePage(state, world, told), state.overlay.top, command);
  return withOverlay(state, { name: 'scene', top });
}

export function ScenePanel({ top }: { readonly top: number }): React.JSX.Element | null {
  const { state, world } = useSurroundings();
  const told = toldOn(state);
  if (told === undefined) return null;
  const page = scenePage(state, world, told);
  return (
    <Frame title={drillTitle(world, told)}>
      {state.settings.screenReader ? (
        page.lines.filter(Boolean).map((line) => <Text key={line}>{line}</Text>)
      ) : (
        <TextPage page={page} top={top} />
      )}
    </Frame>
  );
}
