/** What a lesson's text may use by name. Lessons import no component themselves. */

import Cautions from './Cautions.astro';
import ChainTable from './ChainTable.astro';
import ChooseOne from './ChooseOne.astro';
import DesignerNote from './DesignerNote.astro';
import Instructor from './Instructor.astro';
import Nothing from './Nothing.astro';
import Pitfall from './Pitfall.astro';
import Predict from './Predict.astro';
import PutInOrder from './PutInOrder.astro';
import Recall from './Recall.astro';
import Section from './Section.astro';
import RuleTable from './blind-holes/RuleTable.astro';
import ThreadDepthChart from './blind-holes/ThreadDepthChart.astro';
import ToPlanner from './ToPlanner.astro';
import Worked from './Worked.astro';
import WorkOut from './WorkOut.astro';

const shared = {
  Cautions,
  ChainTable,
  ChooseOne,
  DesignerNote,
  Pitfall,
  Predict,
  PutInOrder,
  Recall,
  RuleTable,
  Section,
  ThreadDepthChart,
  ToPlanner,
  Worked,
  WorkOut,
};

/** For whoever learns alone: without the instructor's notes. */
export const lessonComponents = { ...shared, Instructor: Nothing };

/** For whoever teaches. */
export const teachComponents = { ...shared, Instructor };
