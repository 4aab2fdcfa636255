/** Charts on paper: pairs, ladders, greys, values and a practice sheet, as pages. Pure. */
import type { PaperStyle } from '../paper/style.js';
import type { PaperDocument } from '../paper/types.js';
import { type Chart, chartDocument } from './pages/frame.js';
import { greysChart } from './pages/greys.js';
import { laddersChart } from './pages/ladders.js';
import { pairsChart } from './pages/pairs.js';
import { practiceChart } from './pages/practice.js';
import { valuesChart } from './pages/values.js';
import type { ChartId, ChartRequest } from './types.js';

export { CHARTS, type ChartId, type ChartRequest, type Progress } from './types.js';

const MAKERS: Readonly<Record<ChartId, (request: ChartRequest, style: PaperStyle) => Chart>> = {
  pairs: pairsChart,
  ladders: laddersChart,
  greys: greysChart,
  values: valuesChart,
  practice: practiceChart,
};

/** A chart on its pages. @throws RangeError for unknown paints */
export const chartPaper = (id: ChartId, request: ChartRequest, style: PaperStyle): PaperDocument =>
  chartDocument(MAKERS[id](request, style), style);
