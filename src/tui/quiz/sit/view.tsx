/** The screens of a sitting. */
import type { ReactNode } from 'react';
import { cleanText } from '../../../text/sanitize.js';
import { Drill } from '../../drill/view.js';
import type { Glyphs } from '../../kit/glyphs.js';
import { ItemList, type ListItem } from '../../kit/list.js';
import { aboutView, keysView, textView } from '../../kit/panels.js';
import type { View } from '../../kit/program.js';
import { Result } from '../../result/view.js';
import { panelView } from '../../sheet/panel.js';
import { picturedIn, sitKeys } from './keys.js';
import {
  clockText,
  isAnsweredAt,
  isOpenAt,
  judgedOf,
  questionAt,
  questionOf,
  type SitState,
  type SitWorld,
  secondsAt,
  standingAnswer,
} from './state.js';

const places = (world: SitWorld): number[] => world.order.map((_, place) => place);

const answeredCount = (world: SitWorld, state: SitState): number =>
  places(world).filter((place) => isAnsweredAt(world, state, place)).length;

function beginTexts(world: SitWorld, state: SitState): string[] {
  const { rules, questions } = world.handout;
  const { timePerQuestionSeconds: limit } = rules;
  const count = `${questions.length} question${questions.length === 1 ? '' : 's'}`;
  return [
    `${state.sitting.name}, this is ${world.handout.title}: ${count}.`,
    '',
    ...(state.isResumed
      ? [
          `Your sitting was begun before, on ${state.sitting.started.slice(0, 16).replace('T', ' at ')} UTC, and goes on where it was: ${answeredCount(world, state)} of ${questions.length} answered. If that was not you, leave and start with another --name.`,
          '',
        ]
      : []),
    limit === undefined
      ? 'There is no clock.'
      : `You have ${clockText(limit)} (minutes and seconds) for each question. Its clock starts when you press Enter to see it, and goes on when you look at another question or leave.`,
    rules.backAllowed
      ? 'You may go back and change an answer until you hand in.'
      : 'You cannot go back to a question.',
    rules.showResult === 'each'
      ? 'You see the result after each question, which is then closed.'
      : rules.showResult === 'later'
        ? 'Your teacher shows the results later.'
        : 'You see the results when you have handed in.',
    'What you choose is saved at once: the program may be closed and started again.',
  ];
}

function questionSide(world: SitWorld, state: SitState, place: number, glyphs: Glyphs): string {
  const seconds = state.settings.screenReader ? undefined : secondsAt(world, state, place);
  const isClosed = !isOpenAt(world, state, place);
  const isAnswered = isAnsweredAt(world, state, place);
  const sign = state.settings.screenReader ? '' : `${isAnswered ? glyphs.chosen : glyphs.open} `;
  return [
    `${place + 1} of ${world.order.length}`,
    `${sign}${isClosed ? 'closed' : isAnswered ? 'answered' : 'not answered'}`,
    ...(seconds === undefined || isClosed ? [] : [`${clockText(seconds)} left`]),
  ].join('  ');
}

function overviewItems(world: SitWorld, state: SitState, glyphs: Glyphs): ListItem[] {
  return places(world).map((place) => {
    const { drill } = questionAt(world, place);
    const isAnswered = isAnsweredAt(world, state, place);
    const left = isOpenAt(world, state, place) ? '' : ', closed';
    return {
      key: drill.id,
      lead: { text: `${isAnswered ? glyphs.chosen : glyphs.open} ` },
      text: `${place + 1}. ${cleanText(drill.title, 80)}`,
      side: `${isAnswered ? 'answered' : 'not answered'}${left}`,
    };
  });
}

function doneItems(world: SitWorld, state: SitState, glyphs: Glyphs): ListItem[] {
  return places(world).map((place) => {
    const { drill, index } = questionAt(world, place);
    const text = `${place + 1}. ${cleanText(drill.title, 80)}`;
    if (!isAnsweredAt(world, state, place))
      return { key: drill.id, lead: { text: '  -  ' }, text, side: 'not answered' };
    const { mark, verdict } = world.grader.grade(index, standingAnswer(world, state, place));
    return {
      key: drill.id,
      lead: { text: `${String(mark).padStart(3)}  ` },
      text,
      side: `${glyphs[verdict]} ${verdict}`,
    };
  });
}

function overlayView(world: SitWorld, state: SitState): View | undefined {
  const { overlay } = state;
  const open = world.order.length - answeredCount(world, state);
  switch (overlay?.name) {
    case 'keys': {
      const { overlay: _closed, ...behind } = state;
      return keysView(sitKeys(world, behind));
    }
    case 'leave':
      return textView('Leave', [
        'Leave for now?',
        '',
        'What you chose is saved. Start again with the same name and go on where you were; hand in when you are done.',
      ]);
    case 'finish':
      return textView('Hand in', [
        'Hand in?',
        '',
        open === 0
          ? 'Every question is answered. Nothing can be changed afterwards.'
          : `${open} of ${world.order.length} questions ${open === 1 ? 'is' : 'are'} not answered. Nothing can be changed afterwards.`,
      ]);
    case 'caution':
      return aboutView(overlay.pigments);
    case 'sheet':
    case 'scene': {
      const shown = picturedIn(world, state);
      return shown && panelView(state, world.world, shown, overlay);
    }
    default:
      return undefined;
  }
}

function screenTitle(world: SitWorld, state: SitState): string {
  const { screen, sitting } = state;
  switch (screen.name) {
    case 'covered':
      return `Question ${screen.place + 1}`;
    case 'question':
    case 'result': {
      const { drill } = questionAt(world, screen.place);
      const title = cleanText(drill.title, 80);
      if (screen.name === 'question') return title;
      return `${isAnsweredAt(world, state, screen.place) ? 'Result' : 'Not answered; the best'}: ${title}`;
    }
    case 'done':
      return `${world.name}: ${sitting.finished === undefined ? 'results' : 'handed in'}`;
    default:
      return world.handout.title;
  }
}

function screenSide(world: SitWorld, state: SitState, glyphs: Glyphs): string {
  const { screen } = state;
  if (screen.name === 'question') return questionSide(world, state, screen.place, glyphs);
  if (screen.name === 'result' || screen.name === 'covered')
    return `${screen.place + 1} of ${world.order.length}`;
  return screen.name === 'begin' ? '' : `${answeredCount(world, state)} of ${world.order.length} answered`;
}

function screenBody(world: SitWorld, state: SitState, glyphs: Glyphs): ReactNode {
  const { screen } = state;
  switch (screen.name) {
    case 'begin':
      return textView('', beginTexts(world, state)).body;
    case 'covered': {
      const { timePerQuestionSeconds: limit = 0 } = world.handout.rules;
      const text = `You have ${clockText(limit)} (minutes and seconds) for this question. The clock starts when you press Enter.`;
      return textView('', [text]).body;
    }
    case 'question':
      return <Drill screen={questionOf(world, state, screen)} />;
    case 'result':
      return <Result screen={judgedOf(world, state, screen)} />;
    case 'overview': {
      const { backAllowed } = world.handout.rules;
      const head = backAllowed
        ? 'All questions. Open one to look at it again, or press f to hand in.'
        : 'That was the last question. Press f to hand in.';
      return (
        <ItemList
          head={[head, '']}
          items={overviewItems(world, state, glyphs)}
          {...(backAllowed ? { selected: screen.selected } : {})}
        />
      );
    }
    case 'done': {
      const marks = places(world).filter((place) => isAnsweredAt(world, state, place));
      const sum = marks.reduce((total, place) => {
        const { index, points } = questionAt(world, place);
        return total + (world.grader.grade(index, standingAnswer(world, state, place)).mark / 100) * points;
      }, 0);
      const possible = world.handout.questions.reduce((total, { points }) => total + points, 0);
      const head = `${Math.round(sum * 100) / 100} of ${possible} points. Open a result to see why.`;
      return (
        <ItemList head={[head, '']} items={doneItems(world, state, glyphs)} selected={screen.selected} />
      );
    }
  }
}

/** The screen in front, or the panel over it. */
export const sitView = (world: SitWorld, state: SitState, glyphs: Glyphs): View =>
  overlayView(world, state) ?? {
    title: screenTitle(world, state),
    side: screenSide(world, state, glyphs),
    body: screenBody(world, state, glyphs),
  };
