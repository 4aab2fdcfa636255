/** Marks by skill: what a family of drills trains, over the questions of it that a quiz asks. */
import { findFamily } from '../drills/families.js';
import type { Handout, Question } from './handout.js';
import type { MarkedSitting, QuestionMark } from './marking.js';

/** One student's marks in one skill. */
export interface SkillMarks {
  readonly family: string;
  /** 0-100; a question left open counts 0. */
  readonly mean: number;
  readonly questions: readonly { readonly question: Question; readonly mark: QuestionMark }[];
}

/** The families that a quiz asks, in the order of their first questions. */
export const familiesOf = ({ questions }: Pick<Handout, 'questions'>): string[] => [
  ...new Set(questions.map(({ drill }) => drill.family)),
];

/** What a skill is called. */
export const skillName = (family: string): string => findFamily(family)?.name ?? family;

/** One student's marks by skill. */
export function bySkill(
  handout: Pick<Handout, 'questions'>,
  { marks }: Pick<MarkedSitting, 'marks'>,
): SkillMarks[] {
  return familiesOf(handout).map((family) => {
    const own = handout.questions
      .map((question, index) => ({ question, mark: marks[index] as QuestionMark }))
      .filter(({ question }) => question.drill.family === family);
    return { family, mean: own.reduce((sum, { mark }) => sum + mark.mark, 0) / own.length, questions: own };
  });
}
