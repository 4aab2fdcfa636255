/**
 * Colours as those see them who see fewer. Simulation: Machado, Oliveira and Fernandes, "A Physiologically-based Model for Simulation of
 * Color Vision Deficiency", IEEE TVCG 15 (2009), as culori has it.
 */
import {
  type Color,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
} from 'culori';

export const DEFICIENCIES = {
  protanopia: filterDeficiencyProt(1),
  deuteranopia: filterDeficiencyDeuter(1),
  tritanopia: filterDeficiencyTrit(1),
} as const;

/** CIEDE2000. */
export const deltaE = differenceCiede2000();

/** CIEDE2000 from which two colours side by side are two to those who see fewer colours; invented, twice what is seen at a look. */
export const LEAST_SEEN = 2.5;

/** What is left of the difference of two colours under the deficiency that takes most of it. */
export const leastLeft = (one: Color, other: Color): number =>
  Math.min(...Object.values(DEFICIENCIES).map((filter) => deltaE(filter(one), filter(other))));
