/** One question on paper: scene, picture, goal, patches with what may be said of them, and the lettered answers. */
import { type Drill, kindOf } from '../../drills/kinds/index.js';
import type { FieldOption } from '../../drills/types.js';
import { type Block, beside, EMPTY, inset, line, over, paragraph, stack } from '../../paper/block.js';
import type { Group } from '../../paper/flow.js';
import { patchOverWords, patchRows, type Swatch } from '../../paper/patch.js';
import { scenePicture } from '../../paper/scene.js';
import { GAPS, type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { INK } from '../../paper/types.js';
import type { DrillScene } from '../../pictures/scene.js';
import { cleanText } from '../../text/sanitize.js';
import { sayAll } from '../../words/tell.js';
import type { Handout } from '../handout.js';
import type { LetteredAnswer } from '../lettered.js';
import { answersBlock, LABEL } from './letters.js';
import { type PaperQuestion, pointsWords } from './style.js';

const PICTURE_WIDTH = 168;
const PICTURE_GAP = 14;
/** Longest text of a drill that is printed, in characters; as on the screen. */
const LONGEST = 600;

/** "2  Bollard in the rain" and what it is worth. */
export function headLine({ number, question }: PaperQuestion, right: string, style: PaperStyle): Block {
  const width = textWidth(style);
  const side = line(right, width, { ...TYPE.small, colour: INK.muted }, style.ruler, 'right');
  const room = width - style.ruler(right, TYPE.small) - 10;
  const title = paragraph(
    `${number}. ${cleanText(question.drill.title, 120)}`,
    room,
    TYPE.heading,
    style.ruler,
  );
  return over(title, inset(side, 0, 3));
}

/** Where the start lies in the picture and which part is open: hatching may be lost on a bad copy. */
function caption({ painted, start, passage }: DrillScene): string {
  const wordsOf = (id: string | undefined): string | undefined =>
    painted.picture.areas.find((area) => area.id === id)?.words;
  const [there, open] = [wordsOf(start), wordsOf(passage)];
  const parts = [
    ...(there === undefined ? [] : [`Start: ${there}.`]),
    ...(open === undefined ? [] : [`Left open, hatched: ${open}.`]),
  ];
  return parts.join(' ') || painted.picture.title;
}

function pictureBlock(scene: DrillScene, style: PaperStyle): Block {
  const type = { size: 7.5, colour: INK.muted };
  return stack(
    [scenePicture(scene.painted, PICTURE_WIDTH), paragraph(caption(scene), PICTURE_WIDTH, type, style.ruler)],
    3,
  );
}

function words(
  { question: { drill } }: PaperQuestion,
  { rules, studio }: Handout,
  style: PaperStyle,
  width: number,
): Block {
  const { ruler, voice } = style;
  const text = (said: string, type: typeof TYPE.body | typeof TYPE.ask | typeof TYPE.small): Block =>
    paragraph(cleanText(said, LONGEST), width, type, ruler);
  const goal = sayAll(kindOf(studio, drill).goalLines(drill), voice);
  return stack(
    [
      text(drill.scene, TYPE.body),
      text(drill.ask, TYPE.ask),
      stack(goal.map((said) => text(said, TYPE.small))),
      rules.hints && drill.hint !== undefined ? text(`Hint: ${drill.hint}`, TYPE.small) : EMPTY,
    ],
    4,
  );
}

/** The options with a colour of their own that stand in lettered answers, in the order of the drill. */
function optionSwatches({ studio }: Handout, drill: Drill, lettered: readonly LetteredAnswer[]): Swatch[] {
  const hasColour = (option: FieldOption): option is FieldOption & Required<Pick<FieldOption, 'swatch'>> =>
    option.swatch !== undefined;
  return kindOf(studio, drill)
    .fields(drill)
    .flatMap(({ id, options }) =>
      options
        .filter(hasColour)
        .filter((option) => lettered.some(({ answer }) => answer[id] === option.id))
        .map(
          ({ label, swatch }): Swatch => ({
            label: cleanText(label, 60),
            reflectance: swatch,
            unread: 'figures',
          }),
        ),
    );
}

/** Heights of patches: what is given is looked at, what can be chosen is a reminder. */
const HEIGHTS = { given: 34, options: 20 } as const;
/** Width of what is given, where it stands beside what can be chosen. */
const ONE_WIDTH = 118;
const ASIDE_GAP = 22;
const CHOICES = 'To choose from:';

/** The colours of the question, and those of the paints that stand in its answers. */
function colours(given: readonly Swatch[], options: readonly Swatch[], style: PaperStyle): Block[] {
  const width = textWidth(style);
  const look = (height: number) => ({ ruler: style.ruler, voice: style.voice, height });
  const chosen = (room: number): Block =>
    stack([paragraph(CHOICES, room, LABEL, style.ruler), patchRows(options, room, look(HEIGHTS.options))], 3);
  const [only] = given;
  if (only !== undefined && given.length === 1 && options.length > 0) {
    const room = width - ONE_WIDTH - ASIDE_GAP;
    return [
      beside([
        [0, patchOverWords(only, ONE_WIDTH, look(HEIGHTS.given))],
        [ONE_WIDTH + ASIDE_GAP, chosen(room)],
      ]),
    ];
  }
  return [
    ...(given.length === 0 ? [] : [patchRows(given, width, look(HEIGHTS.given))]),
    ...(options.length === 0 ? [] : [chosen(width)]),
  ];
}

/** A question, to be kept together. */
export function questionGroup(asked: PaperQuestion, handout: Handout, style: PaperStyle): Group {
  const { question, lettered, scene } = asked;
  const { drill, points } = question;
  const width = textWidth(style);
  const left = scene === undefined ? width : width - PICTURE_WIDTH - PICTURE_GAP;
  const top = beside([
    [0, words(asked, handout, style, left)],
    ...(scene === undefined ? [] : [[left + PICTURE_GAP, pictureBlock(scene, style)] as const]),
  ]);
  const given = kindOf(handout.studio, drill)
    .given(drill)
    .map((swatch): Swatch => ({ ...swatch, label: cleanText(swatch.label, 60) }));
  const options = optionSwatches(handout, drill, lettered);
  return {
    gap: GAPS.part,
    parts: [
      stack([headLine(asked, pointsWords(points), style), top], 4),
      ...colours(given, options, style),
      ...answersBlock(asked, handout, style),
    ].filter(({ height }) => height > 0),
  };
}
