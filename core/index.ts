/**
 * The public face of the core: everything a page, a test or another program may call.
 * Lengths in mm unless a field says otherwise; nothing here throws for what a person typed.
 */

export type { Note, Outcome, Problem } from './outcome';
export { SOURCES } from './sources';
export type { Source, SourceId, SourceKind } from './sources';

export { readThread } from './thread/read';
export { THREAD_NOTE_CODES, THREAD_PROBLEM_CODES } from './thread/codes';
export type { ThreadNoteCode, ThreadProblemCode } from './thread/codes';
export { basicDiameters } from './thread/profile';
export type { BasicDiameters } from './thread/profile';
export { standardThreads } from './thread/standard';
export { standardPipeThreads } from './thread/standard-pipe';
export type { Hand, Thread, ThreadForm, ThreadSystem } from './thread/thread';

export { engagementGroup, normalEngagement } from './limits/engagement-group';
export { engagementFactor } from './limits/unified-tolerances';
export { externalMajorMin, externalPitchMin } from './limits/external';
export { minorLimitsMm, threadLimits } from './limits/thread-limits';
export type { LimitsOptions } from './limits/thread-limits';
export { LIMITS_NOTE_CODES, LIMITS_PROBLEM_CODES } from './limits/codes';
export type { LimitsNoteCode, LimitsProblemCode } from './limits/codes';
export type { Range, ThreadLimits } from './limits/limits';

export type { ChipCourse } from './chips/direction';
export type { Chamfer, ChamferClass } from './chamfer/chamfer';
export type { DrillChoice, DrillSeries } from './drill/drill';
export type { Material, MaterialId } from './material/material';
export type { TapProcess, TapStyle } from './tap/tap';
export type {
  Assumption,
  Crossing,
  Cycle,
  Duty,
  HoleKind,
  HolePlan,
  HoleRequest,
  LaterProcess,
  Reason,
  Remedy,
  Spindle,
  SpindleDrive,
  TapChoice,
  Warning,
  WarningLevel,
} from './plan/types';

export { formTapHole } from './drill/form-hole';
export type { FormDrill, FormHole, FormHoleOptions } from './drill/form-hole';
export { percentThread } from './drill/percent';
export { ENGAGEMENT_PROBLEM_CODES, neededEngagement } from './engagement/needed';
export { PURPOSES } from './engagement/purposes';
export type { Purpose } from './engagement/purposes';
export type { Engagement, EngagementProblemCode, EngagementRequest } from './engagement/needed';
export { SCREW_GRADES, SCREW_STRENGTH } from './engagement/screws';
export type { ScrewGrade } from './engagement/screws';
export { gaugeSet, TURN_RULES } from './gauge/members';
export type { Gauge, GaugeMember, GaugeProof, GaugeSet, TurnRule } from './gauge/members';
export { pipeNotes } from './gauge/pipe';
export type { PipeDrill, PipeNotes } from './gauge/pipe';
export { beforePlating, PLATING_PROBLEM_CODES } from './gauge/plating';
export type { PlatedWindow, PlatingRule } from './gauge/plating';
export { GAUGE_FINDING_CODES, readGauges } from './gauge/reading';
export type { GaugeFindingCode, GaugeReading, GaugeVerdict } from './gauge/reading';
export { roomTable } from './hole/room-table';
export type { ChamferRoom, RoomTable } from './hole/room-table';
export { TAP_LIMIT_PROBLEM_CODES, tapLimit } from './tap/limits';
export type { TapLimit, TapLimitProblemCode, TapLimitSystem } from './tap/limits';
export { judgeTapLimits } from './tap/limits-judge';
export type { TapLimitChoice } from './tap/limits-judge';
export { referenceOf, threadReference } from './plan/reference';
export type { ClassLimits, EngagementRow, ThreadReference } from './plan/reference';
export type { ReferenceDrill, Trap } from './plan/reference-drills';
export type { Relative, Relatives } from './plan/reference-relatives';
export type { HoleWindowFacts } from './plan/reference-window';

export { planHole } from './plan/plan';
export { planThreadMill } from './plan/thread-mill';
export { MILL_PROBLEM_CODES } from './plan/thread-mill-request';
export type { MillProblemCode } from './plan/thread-mill-request';
export type { ThreadMillPlan, ThreadMillRequest } from './plan/thread-mill-types';
export {
  ASSUMPTION_CODES,
  REASON_CODES,
  REMEDY_CODES,
  REQUEST_PROBLEM_CODES,
  WARNING_CODES,
} from './plan/codes';
export type {
  AssumptionCode,
  ReasonCode,
  RemedyCode,
  RequestProblemCode,
  WarningCode,
} from './plan/codes';
export { MATERIALS, findMaterial } from './material/table';
export { MATERIAL_IDS } from './material/material';
export { readMaterial } from './material/read-material';
export type { MaterialReading } from './material/read-material';
export { MATERIAL_NOTE_CODES, MATERIAL_PROBLEM_CODES } from './material/read-material-codes';
export type { MaterialNoteCode, MaterialProblemCode } from './material/read-material-codes';
export { CHAMFER_CLASSES } from './chamfer/chamfer';
export { DRILL_SERIES } from './drill/drill';

export { readCallout } from './drawing/callout';
export { planDrawing } from './drawing/plan-drawing';
export { planPart } from './drawing/plan-part';
export { COLUMN_KINDS } from './drawing/columns';
export type { Column, ColumnKind } from './drawing/columns';
export { drawingEntries } from './drawing/entries';
export type { DrawingEntry } from './drawing/entries';
export { tableOf } from './drawing/table';
export type { HoleTable, TableEntry } from './drawing/table';
export type { PartHole } from './drawing/plan-part';
export { ownedAnswer, ownedDrill } from './plan/owned';
export type { OwnedAnswer, OwnedDrillAnswer, OwnedTap } from './plan/owned';
export { toolsFor } from './drawing/tools';
export type { HoleTools } from './drawing/tools';
export { CALLOUT_NOTE_CODES, CALLOUT_PROBLEM_CODES, QUESTION_CODES } from './drawing/types';
export type {
  Apart,
  Callout,
  CalloutNoteCode,
  CalloutProblemCode,
  DrawingPlan,
  HoleVerdict,
  LengthLimits,
  PlannedHole,
  Question,
  QuestionCode,
  Shop,
} from './drawing/types';

export { spindleCurve, torqueAt } from './cycle/spindle';
export type { SpindleCurve, SpindlePoint } from './cycle/spindle';
export { ownMaterial } from './material/own';
export type { OwnMaterialInput } from './material/own';
export { learnedScale, readingFactor } from './plan/learned';
export type { LearnedScale, ShopReading } from './plan/learned';
export { spindleStudy } from './plan/spindle-study';
export type { SpindleQuestion, SpindleStudy } from './plan/spindle-study';
export { strengthStudy } from './plan/strength-study';
export type { StrengthQuestion, StrengthStudy } from './plan/strength-study';
export { strokeBand } from './plan/stroke-band';
export { studyTap } from './plan/tap-study';
export type { StudyOptions, TapStudy } from './plan/tap-study';
