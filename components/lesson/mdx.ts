/** What a lesson's text may use by name. Lessons import no component themselves. */

import Cautions from './Cautions.astro';
import ChamferRow from './ChamferRow.astro';
import ClassTable from './chamfer-classes/ClassTable.astro';
import LoadChart from './chamfer-classes/LoadChart.astro';
import ThinTable from './chamfer-classes/ThinTable.astro';
import ChipFigure from './naming-a-tap/ChipFigure.astro';
import ChipMaterials from './naming-a-tap/ChipMaterials.astro';
import FaceTable from './naming-a-tap/FaceTable.astro';
import TurnTheFace from './naming-a-tap/TurnTheFace.astro';
import WhereChipsEnd from './naming-a-tap/WhereChipsEnd.astro';
import AskFinder from './AskFinder.astro';
import Turns from './gauging/Turns.astro';
import Proofs from './gauging/Proofs.astro';
import ArmPicker from './hand-tapping/ArmPicker.astro';
import Sets from './hand-tapping/Sets.astro';
import Shares from './why-taps-break/Shares.astro';
import WearPicker from './why-taps-break/WearPicker.astro';
import Symptoms from './Symptoms.astro';
import ClassOrder from '../teach/ClassOrder.astro';
import ClassQuestion from '../teach/ClassQuestion.astro';
import ClassSum from '../teach/ClassSum.astro';
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
import DoubtFigure from './torque/DoubtFigure.astro';
import FactorTable from './torque/FactorTable.astro';
import StrengthTable from './torque/StrengthTable.astro';
import StrokeFigure from './torque/StrokeFigure.astro';
import RuleTable from './blind-holes/RuleTable.astro';
import ThreadDepthChart from './blind-holes/ThreadDepthChart.astro';
import DriftChart from './speed-feed-and-cycle/DriftChart.astro';
import PowerTable from './speed-feed-and-cycle/PowerTable.astro';
import ReachChart from './speed-feed-and-cycle/ReachChart.astro';
import SpeedTable from './speed-feed-and-cycle/SpeedTable.astro';
import ToCalculator from './ToCalculator.astro';
import ToPlanner from './ToPlanner.astro';
import Worked from './Worked.astro';
import WorkOut from './WorkOut.astro';
import BaseTable from './tap-drill-and-percent/BaseTable.astro';
import DrawerBar from './tap-drill-and-percent/DrawerBar.astro';
import DrillSteps from './tap-drill-and-percent/DrillSteps.astro';
import HoleChart from './tap-drill-and-percent/HoleChart.astro';
import WaysTable from './tap-drill-and-percent/WaysTable.astro';
import WindowTable from './tap-drill-and-percent/WindowTable.astro';
import PassChain from './through-holes/PassChain.astro';
import PastFigure from './through-holes/PastFigure.astro';
import PastTable from './through-holes/PastTable.astro';
import LayerFigure from './class-and-tap-limits/LayerFigure.astro';
import LimitChart from './class-and-tap-limits/LimitChart.astro';
import MatchTable from './class-and-tap-limits/MatchTable.astro';
import TapBar from './class-and-tap-limits/TapBar.astro';
import ZoneTable from './class-and-tap-limits/ZoneTable.astro';
import PickMaterial from './chips-and-materials/PickMaterial.astro';
import RoomBars from './chips-and-materials/RoomBars.astro';
import TraitTable from './chips-and-materials/TraitTable.astro';
import MetalBars from './how-deep-is-enough/MetalBars.astro';
import DeepPicker from './how-deep-is-enough/DeepPicker.astro';
import ThreeNumbers from './how-deep-is-enough/ThreeNumbers.astro';
import HolePicker from './form-taps/HolePicker.astro';
import HoleWindow from './form-taps/HoleWindow.astro';
import BesideTable from './form-taps/BesideTable.astro';
import FormableTable from './form-taps/FormableTable.astro';
import SpecialPicker from './special-threads/SpecialPicker.astro';
import InsertHoles from './special-threads/InsertHoles.astro';

const shared = {
  ArmPicker,
  AskFinder,
  BaseTable,
  BesideTable,
  Cautions,
  ChainTable,
  ChamferRow,
  ChipFigure,
  ChipMaterials,
  ChooseOne,
  ClassTable,
  DeepPicker,
  DesignerNote,
  DoubtFigure,
  DrawerBar,
  DriftChart,
  DrillSteps,
  FaceTable,
  FactorTable,
  FormableTable,
  HoleChart,
  HolePicker,
  HoleWindow,
  InsertHoles,
  LayerFigure,
  LimitChart,
  LoadChart,
  MatchTable,
  MetalBars,
  PassChain,
  PastFigure,
  PastTable,
  PickMaterial,
  Pitfall,
  PowerTable,
  Predict,
  Proofs,
  PutInOrder,
  ReachChart,
  Recall,
  RoomBars,
  RuleTable,
  Section,
  Sets,
  Shares,
  SpecialPicker,
  SpeedTable,
  StrengthTable,
  StrokeFigure,
  Symptoms,
  TapBar,
  ThinTable,
  ThreadDepthChart,
  ThreeNumbers,
  ToCalculator,
  ToPlanner,
  TraitTable,
  Turns,
  TurnTheFace,
  WaysTable,
  WearPicker,
  WhereChipsEnd,
  WindowTable,
  Worked,
  WorkOut,
  ZoneTable,
};

/** For whoever learns alone: without the instructor's notes. */
export const lessonComponents = { ...shared, Instructor: Nothing };

/** For a class: questions to call answers to, and the instructor's notes. */
export const teachComponents = {
  ...shared,
  Predict: ClassQuestion,
  ChooseOne: ClassQuestion,
  WorkOut: ClassSum,
  PutInOrder: ClassOrder,
  Instructor,
};
