export { engine } from '../../../components/calculators/spindle/engine';
export { EXAMPLE } from '../../../components/calculators/spindle/examples';
export { INPUTS } from '../../../components/calculators/spindle/inputs';
export { WORDS } from '../../../components/words/en/calculators/spindle/messages';
export { Spindle as View } from '../../../components/calculators/spindle/view';
