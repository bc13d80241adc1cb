export { engine } from '../../../components/calculators/thread-limits/engine';
export { EXAMPLE } from '../../../components/calculators/thread-limits/examples';
export { INPUTS } from '../../../components/calculators/thread-limits/inputs';
export { WORDS } from '../../../components/words/en/calculators/thread-limits/messages';
export { ThreadLimits as View } from '../../../components/calculators/thread-limits/view';
