export { engine } from '../../../components/calculators/tap-strength/engine';
export { EXAMPLE } from '../../../components/calculators/tap-strength/examples';
export { INPUTS } from '../../../components/calculators/tap-strength/inputs';
export { WORDS } from '../../../components/words/en/calculators/tap-strength/messages';
export { TapStrength as View } from '../../../components/calculators/tap-strength/view';
