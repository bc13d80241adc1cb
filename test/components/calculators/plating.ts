export { engine } from '../../../components/calculators/plating/engine';
export { EXAMPLE } from '../../../components/calculators/plating/examples';
export { INPUTS } from '../../../components/calculators/plating/inputs';
export { WORDS } from '../../../components/words/en/calculators/plating/messages';
export { Plating as View } from '../../../components/calculators/plating/view';
