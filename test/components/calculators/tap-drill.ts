export { engine } from '../../../components/calculators/tap-drill/engine';
export { EXAMPLE } from '../../../components/calculators/tap-drill/examples';
export { INPUTS } from '../../../components/calculators/tap-drill/inputs';
export { WORDS } from '../../../components/words/en/calculators/tap-drill/messages';
export { TapDrill as View } from '../../../components/calculators/tap-drill/view';
