export { engine } from '../../../components/calculators/gauging/engine';
export { EXAMPLE } from '../../../components/calculators/gauging/examples';
export { INPUTS } from '../../../components/calculators/gauging/inputs';
export { WORDS } from '../../../components/words/en/calculators/gauging/messages';
export { Gauging as View } from '../../../components/calculators/gauging/view';
