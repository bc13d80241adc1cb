export { engine } from '../../../components/calculators/chamfer/engine';
export { EXAMPLE } from '../../../components/calculators/chamfer/examples';
export { INPUTS } from '../../../components/calculators/chamfer/inputs';
export { WORDS } from '../../../components/words/en/calculators/chamfer/messages';
export { Chamfer as View } from '../../../components/calculators/chamfer/view';
