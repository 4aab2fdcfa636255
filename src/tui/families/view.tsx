/** The list of skills, with the level that is picked. */
import { Text } from 'ink';
import { padText, widthOf } from '../../text/wrap.js';
import { Frame } from '../kit/frame.js';
import { frameParts } from '../kit/layout.js';
import { notesOf } from '../kit/notes.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import type { Screen } from '../kit/state.js';
import { useSurroundings } from '../kit/surroundings.js';
import { windowAround } from '../kit/window.js';

/** What the levels are, as the families screen says them. */
const LEVELS = ['your level', '1 worked', '2 two options', '3 four options', '4 amounts', '5 cold'] as const;

export function Families({
  screen: { selected, level },
}: {
  readonly screen: Screen & { name: 'families' };
}): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const levelWords = LEVELS[level ?? 0] ?? '';
  const { families } = world;
  const rows = frameParts(state, notesOf(state).length).body;
  const seen = windowAround(families.length, selected, rows);
  if (state.settings.screenReader) {
    const family = families[selected];
    return (
      <Frame title="What to practise">
        <Text>
          {family === undefined
            ? 'There are no drills.'
            : `${family.name}, ${family.drills} written drills. ${selected + 1} of ${families.length}. Level: ${levelWords}.`}
        </Text>
      </Frame>
    );
  }
  const columns = Math.max(0, ...families.map(({ name }) => widthOf(name))) + 2;
  return (
    <Frame title="What to practise" side={`${selected + 1} of ${families.length}`}>
      {families.length === 0 ? <Row pieces={[{ text: 'There are no drills.' }]} /> : null}
      <Rows
        lines={families.slice(seen.from, seen.to).map(({ name, drills }, offset): Piece[] => {
          const chosen = seen.from + offset === selected;
          return [
            { text: chosen ? `${glyphs.pointer} ` : '  ', role: 'here' },
            { text: padText(name, columns), role: chosen ? 'selected' : 'plain' },
            chosen
              ? { text: `${glyphs.less}${levelWords}${glyphs.more}`, role: 'selected' }
              : { text: `${drills} ${drills === 1 ? 'drill' : 'drills'}`, role: 'muted' },
          ];
        })}
      />
    </Frame>
  );
}
