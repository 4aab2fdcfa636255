/** Plans of mix drills: a start, a mixture worth reaching, a subject that has both colours, a goal and a tray that tempts. */
import { type Draw, pick, shuffled } from '../../chance/draw.js';
import type { Aim } from '../../judgement/index.js';
import { evidenceOf, type Pigment, paintOf, type Studio } from '../../paints/index.js';
import { type FirstWash, seeLaid, trialOf } from '../../washes/index.js';
import { type Choice, howsOf } from '../kinds/mix/choice.js';
import { type MixDrill, type Touch, touchRatio, USUAL_TOUCHES } from '../kinds/mix/schema.js';
import { seatOf } from '../kinds/mix/seat.js';
import { solved } from '../kinds/mix/solve.js';
import { findSubject, type Subject } from '../lexicon.js';
import { goalOf, IS_AIM, MOST_HELD_STEP, meets } from './aims.js';
import { GLAZES, type Level, openingsAt, THINS, TRAY_SIZE, touchesRound } from './levels.js';
import { type Candidate, isVioletPair, type Partner, type PlanRules } from './mix-rules.js';
import { canBegin, subjectsFor, suits } from './subjects.js';
import { rulesBy, startOfTwo, thirdOf, wantsThird } from './third.js';
import type { Wanted } from './types.js';

/** All of a mix drill but its words. */
export type MixPlan = Pick<
  MixDrill,
  'start' | 'goal' | 'subject' | 'tray' | 'painting' | 'amounts' | 'glazes' | 'strokes' | 'thins'
>;

function startFrom(
  palette: readonly string[],
  { strengths }: PlanRules,
  hasThird: boolean,
  draw: Draw,
): FirstWash {
  const [one, two] = shuffled(palette, draw) as [string, string | undefined];
  const strength = pick(strengths, draw);
  // One start in four is a mixture of two paints, unless the family knows which two.
  if (two === undefined || hasThird || draw(3) !== 0) return { paints: { [one]: 1 }, strength };
  return { paints: { [one]: pick([2, 3, 4], draw), [two]: 1 }, strength };
}

/** Everything that may be done with one second paint. @param isOpen which choices are wanted of it */
function candidates(
  studio: Studio,
  start: FirstWash,
  partner: Partner,
  { least, ways }: PlanRules,
  isOpen: (choice: Choice) => boolean = () => true,
): Candidate[] {
  const second = partner.pigment.id;
  const hows = howsOf({
    amounts: USUAL_TOUCHES.filter((touch) => touchRatio(touch) >= touchRatio(least)),
    glazes: GLAZES,
    strokes: [],
  });
  return ways.flatMap((way) =>
    (way === 'puddle' ? THINS : [1]).flatMap((thin) => {
      const choices = hows
        .filter((how) => how.way === way)
        .map((how) => ({ second, how, thin }))
        .filter(isOpen);
      if (choices.length === 0) return [];
      const trial = trialOf(studio, start, { way, ids: [second], strength: 0, thin });
      return choices.map((choice) => ({ choice, partner, colour: trial([choice.how.amount]) }));
    }),
  );
}

/** Aims that more of the wash's own paint can serve. */
const DEEPENS: ReadonlySet<Aim> = new Set(['shade', 'rich']);

/** A mixture that is what an aim means, with the subjects that can have its colours. */
interface Prospect extends Candidate {
  readonly subjects: readonly Subject[];
}

function prospects(
  studio: Studio,
  start: FirstWash,
  partner: Partner,
  aim: Aim,
  rules: PlanRules,
  avoid: readonly string[],
): Prospect[] {
  const { colour } = seeLaid(studio, start);
  return candidates(studio, start, partner, rules)
    .filter((candidate) => IS_AIM[aim](colour, candidate.colour) && (rules.worth?.(candidate) ?? true))
    .map((candidate) => ({ ...candidate, subjects: subjectsFor(aim, colour, candidate.colour, avoid) }))
    .filter(({ subjects }) => subjects.length > 0);
}

/** The first partner, in an order by chance, with which something can be done: one with many good amounts comes no oftener. */
function firstProspect(
  studio: Studio,
  start: FirstWash,
  partners: readonly Partner[],
  aim: Aim,
  level: Level,
  rules: PlanRules,
  avoid: readonly string[],
  draw: Draw,
): Prospect | undefined {
  const { colour } = seeLaid(studio, start);
  if (!canBegin(aim, colour, avoid)) return undefined;
  const first = Object.keys(start.paints).map((id) => paintOf(studio, id));
  // An amount is asked of known strengths alone.
  const asksAmount = level > 2 || rules.asks === 'amount';
  const serving = partners.filter(
    (partner) =>
      !(asksAmount && partner.pigment.strengthEvidence === 'assumed') && rules.serves(partner, colour, first),
  );
  for (const partner of shuffled(serving, draw)) {
    const found = prospects(studio, start, partner, aim, rules, avoid);
    if (found.length > 0) return pick(found, draw);
  }
  return undefined;
}

/** Whether a level leaves a choice open beside the wanted one; only to foresee what the checker would refuse. */
const isOpenAt = (level: Level, wanted: Choice, { how, thin }: Choice): boolean =>
  (level > 3 || thin === wanted.thin) &&
  how.way === wanted.how.way &&
  (level > 2 || how.id === wanted.how.id);

function trayFor(
  studio: Studio,
  { start, goal }: Pick<MixPlan, 'start' | 'goal'>,
  level: Level,
  { partner, choice }: Candidate,
  partners: readonly Partner[],
  rules: PlanRules,
  draw: Draw,
): string[] | undefined {
  const { colour } = seeLaid(studio, start);
  const first = Object.keys(start.paints).map((id) => paintOf(studio, id));
  // A paint that is there to fail must fail, whatever else is open.
  const fails = (each: Partner): boolean =>
    !candidates(studio, start, each, rules, (open) => isOpenAt(level, choice, open)).some((open) =>
      meets(goal, colour, open.colour),
    );
  const others = shuffled(
    partners.filter((each) => each !== partner),
    draw,
  ).filter((each) => !rules.mustFail(each, first) || fails(each));
  const tempting = others.find(rules.tempts);
  if (tempting === undefined) return undefined;
  const size = TRAY_SIZE[rules.asks][level];
  const rest = others.filter((each) => each !== tempting);
  const tray = [partner, tempting, ...rest].slice(0, size).map(({ pigment }) => pigment.id);
  return shuffled(tray, draw);
}

function allowed(studio: Studio, palette: readonly string[], { allows }: PlanRules): Pigment[] {
  const paints = palette.map((id) => paintOf(studio, id));
  return allows === undefined ? paints : paints.filter(allows);
}

/** What the painting has: the start, the answer, and two that only tempt, for being there must not yet be the answer. */
function paintingFor({ paints }: FirstWash, answer: string, tray: readonly string[]): string[] {
  const others = tray.filter((id) => id !== answer).slice(0, 2);
  return [...Object.keys(paints), ...tray.filter((id) => id === answer || others.includes(id))];
}

/** @returns undefined when this draw leads nowhere; try again */
export function planMix(
  studio: Studio,
  { palette, level, avoid, turn }: Wanted,
  family: string,
  usual: PlanRules,
  draw: Draw,
): MixPlan | undefined {
  const paints = allowed(studio, palette, usual);
  if (paints.length < 2) return undefined;
  const ids = paints.map(({ id }) => id);
  const third = thirdOf(family);
  const start =
    third !== undefined && wantsThird(family, usual.aims.length, turn)
      ? startOfTwo(studio, ids, third, third.strengths ?? usual.strengths, draw)
      : startFrom(ids, usual, third !== undefined, draw);
  if (start === undefined) return undefined;
  const first = Object.keys(start.paints);
  const turnsViolet = (id: string): boolean => first.some((one) => isVioletPair(studio, one, id));
  if (first.some(turnsViolet)) return undefined;
  const rules = rulesBy(family, usual, start);
  const isThird = rules !== usual;
  if (Object.keys(start.paints).every((id) => avoid.includes(id))) return undefined;
  const { colour } = seeLaid(studio, start);
  if (!rules.start(colour)) return undefined;
  const aim = rules.aims[turn % rules.aims.length] as Aim;
  const partners = paints
    .filter(({ id }) => !turnsViolet(id))
    .map((pigment): Partner => ({ pigment, ...seatOf(studio, start, pigment.id) }))
    .filter(({ place }) => place !== 'own' || (!isThird && DEEPENS.has(aim)));
  const found = firstProspect(studio, start, partners, aim, level, rules, avoid, draw);
  if (found === undefined) return undefined;
  const { choice } = found;
  const evidence = evidenceOf([...Object.keys(start.paints), choice.second].map((id) => paintOf(studio, id)));
  // Equal parts are the temptation: they have to be among the amounts that can be told apart.
  if (rules.asks === 'amount' && choice.how.way === 'puddle') {
    if (!touchesRound(choice.how.id as Touch, rules.least, evidence).includes('1:1')) return undefined;
  }
  const goal = { ...goalOf(aim, colour, found.colour), ...rules.goal?.(colour, found.colour, aim) };
  const tray = trayFor(studio, { start, goal }, level, found, partners, rules, draw);
  if (tray === undefined) return undefined;
  return {
    start,
    goal,
    subject: pick(found.subjects, draw).id,
    tray,
    ...(isThird && third?.ties === true ? { painting: paintingFor(start, choice.second, tray) } : {}),
    ...openingsAt(level, choice, { ...rules, evidence }, draw),
  };
}

/**
 * Whether the best answer to a made drill, and not only the mixture that it was planned around, is a colour of its subject
 * and made with a paint that may be the answer.
 */
export function keepsPlan(studio: Studio, drill: MixDrill, usual: PlanRules): boolean {
  const rules = rulesBy(drill.family, usual, drill.start);
  const { start, best } = solved(studio, drill);
  const after = best.seen.colour;
  const { aim } = drill.goal;
  const subject = findSubject(drill.subject ?? '');
  if (subject === undefined || !suits(subject, aim, start, after)) return false;
  if ((aim === 'dull' || aim === 'lean') && Math.abs(after.step - start.step) > MOST_HELD_STEP) return false;
  const { second } = best.choice;
  const first = Object.keys(drill.start.paints).map((id) => paintOf(studio, id));
  const partner = { pigment: paintOf(studio, second), ...seatOf(studio, drill.start, second) };
  return rules.serves(partner, start, first);
}
