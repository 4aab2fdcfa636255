/** The printed handout: how to answer, the questions, and a sheet for the answers. It tells nothing that the screen keeps until the answer. */
import { scaleEnds, VALUE_SCALES } from '../../colour/value.js';
import { kindOf } from '../../drills/kinds/index.js';
import { EMPTY, paragraph, rule, stack } from '../../paper/block.js';
import { flow, type Group, withFeet } from '../../paper/flow.js';
import { greyScale } from '../../paper/grey-scale.js';
import { NEAR_NOTE } from '../../paper/patch.js';
import { cutTitle, frameOf, GAPS, type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import type { PaperDocument } from '../../paper/types.js';
import type { Handout } from '../handout.js';
import { plural } from '../report-words.js';
import { answerSheet } from './answer-sheet.js';
import { questionGroup } from './question.js';
import { type PaperQuiz, pointsWords } from './style.js';

/** Whether judging a value by eye is asked somewhere: then no scale of greys may lie beside it, and a grey print would tell it. */
export const readsValues = ({ studio, questions }: Handout): boolean =>
  questions.some(({ drill }) =>
    kindOf(studio, drill)
      .given(drill)
      .some(({ unread }) => unread === 'value'),
  );

function head({ handout, questions }: PaperQuiz, style: PaperStyle): Group {
  const { ruler, voice } = style;
  const width = textWidth(style);
  const possible = questions.reduce((sum, { question }) => sum + question.points, 0);
  const said = [
    'Every lettered line is one whole answer. Choose the best one, and write its letter on the answer sheet, the last page.',
    `Value is counted in steps, ${scaleEnds(VALUE_SCALES[voice.scale])}. Chroma is strength of colour, 0 for a grey. A ratio like 1:4 is one part added to four parts of the paint that is there.`,
    `The right part of a patch is the grey of its value, where no value is asked.${readsValues(handout) ? '' : ' The scale below is to compare with.'}`,
  ];
  return {
    gap: GAPS.part,
    parts: [
      stack(
        [
          paragraph(handout.title, width, TYPE.title, ruler),
          paragraph(
            `${plural(questions.length, 'question')}, ${pointsWords(Math.round(possible * 1000) / 1000)}`,
            width,
            TYPE.small,
            ruler,
          ),
          ...said.map((text) => paragraph(text, width, TYPE.body, ruler)),
        ],
        3,
      ),
      ...(readsValues(handout) ? [] : [greyScale(Math.min(width, 320), 16, voice.scale, ruler)]),
      rule(width),
    ],
  };
}

/** What stands in the middle of each foot, so that a loose page is known again. */
export const sheetWords = (code: string): string => `sheet ${code}`;

/** The handout, for students. */
export function handoutPaper(quiz: PaperQuiz, style: PaperStyle): PaperDocument {
  const { handout, questions, code } = quiz;
  const frame = frameOf(style.size);
  const width = textWidth(style);
  const note = paragraph(NEAR_NOTE, width, TYPE.small, style.ruler);
  const groups: Group[] = [
    head(quiz, style),
    ...questions.map((asked) => questionGroup(asked, handout, style)),
    { parts: [questions.length === 0 ? EMPTY : note] },
    answerSheet(quiz, style),
  ];
  const pages = flow(groups, frame, GAPS.group);
  const foot = { left: cutTitle(handout.title), middle: sheetWords(code) };
  return {
    title: handout.title,
    size: style.size,
    pages: withFeet(pages, frame, foot, style.ruler),
    madeMs: style.madeMs,
  };
}
