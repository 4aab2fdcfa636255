/** The list of skills: one is picked, and a level by hand where wanted. */
import { Text } from 'ink';
import { TOP_LEVEL } from '../../practice/index.js';
import { padText, widthOf } from '../../text/wrap.js';
import { type Binding, back, enter, leftRight, upDown } from '../kit/keys.js';
import { step } from '../kit/moves.js';
import { bodyRows } from '../kit/notes.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { windowAround } from '../kit/window.js';
import { show, startSet } from '../practice/moves.js';
import type { PracticeScreen, PracticeWorld, Pressed, Screen, State } from '../practice/state.js';

type FamiliesScreen = Screen & { readonly name: 'families' };

/** What the levels are, as the families screen says them. */
const LEVELS = ['your level', '1 worked', '2 two options', '3 four options', '4 amounts', '5 cold'] as const;

/** A level moved down or up; below 1 lies the learner's own. */
function movedLevel(level: number | undefined, by: number): number | undefined {
  const to = step(level ?? 0, by, TOP_LEVEL + 1);
  return to === 0 ? undefined : to;
}

function updateFamilies(
  state: State,
  world: PracticeWorld,
  screen: FamiliesScreen,
  { command, key }: Pressed,
): State {
  const { level: picked, ...plain } = screen;
  const atLevel = (level: number | undefined): State => ({
    ...state,
    screen: level === undefined ? plain : { ...plain, level },
  });
  switch (command) {
    case 'less':
      return atLevel(movedLevel(picked, -1));
    case 'more':
      return atLevel(movedLevel(picked, 1));
    case 'digit':
      return atLevel(movedLevel(undefined, Number(key)));
    case 'up':
    case 'down': {
      const by = command === 'up' ? -1 : 1;
      return { ...state, screen: { ...screen, selected: step(screen.selected, by, world.families.length) } };
    }
    case 'confirm': {
      const family = world.families[screen.selected]?.id;
      if (family === undefined) return state;
      const choice = { family, ...(picked === undefined ? {} : { level: picked }) };
      return startSet(state, choice);
    }
    default:
      return show(state, { name: 'home' });
  }
}

function Families({
  families,
  selected,
  level,
}: Omit<FamiliesScreen, 'name'> & Pick<PracticeWorld, 'families'>): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const levelWords = LEVELS[level ?? 0] ?? '';
  if (state.settings.screenReader) {
    const family = families[selected];
    return (
      <Text>
        {family === undefined
          ? 'There are no drills.'
          : `${family.name}, ${family.drills} written drills. ${selected + 1} of ${families.length}. Level: ${levelWords}.`}
      </Text>
    );
  }
  const seen = windowAround(families.length, selected, bodyRows(state));
  const columns = Math.max(0, ...families.map(({ name }) => widthOf(name))) + 2;
  return (
    <>
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
    </>
  );
}

const LEVEL_BY_NUMBER: Binding = {
  keys: Object.fromEntries([...'012345'].map((each) => [each, 'digit' as const])),
  show: '0-5',
  does: 'level by number, 0 for your own',
  quiet: true,
};

export const families: PracticeScreen<'families'> = {
  keys: () => [upDown('skill'), enter('practise it'), leftRight('level'), LEVEL_BY_NUMBER, back('home')],
  update: updateFamilies,
  view: (state, world, screen) => ({
    title: 'What to practise',
    ...(state.settings.screenReader ? {} : { side: `${screen.selected + 1} of ${world.families.length}` }),
    body: <Families {...screen} families={world.families} />,
  }),
};
