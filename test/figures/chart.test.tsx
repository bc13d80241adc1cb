import { describe, it } from 'vitest';
import { DepthChart } from '../../components/chart/DepthChart';
import { TorqueChart } from '../../components/chart/TorqueChart';
import { depthModel, SOURCE, thinModel, torqueModel } from './charts';
import { expectPicture } from './snapshot';

describe('thread depth against hole depth', () => {
  it('draws a band for each chamfer class, the asked depth, the limit and the plan', () =>
    expectPicture('chart-depth-m8', <DepthChart model={depthModel('mm')} source={SOURCE} />));

  it('draws the same in inches', () =>
    expectPicture('chart-depth-inch', <DepthChart model={depthModel('in')} source={SOURCE} />));

  it('says why when there is nothing to draw', () =>
    expectPicture(
      'chart-refusal',
      <DepthChart
        model={depthModel('mm')}
        source={SOURCE}
        refusal="No chart: a taper pipe thread is not planned by its length of full thread."
      />,
    ));
});

describe('torque and tooth load against chamfer length', () => {
  it('draws the band of torque over the load per tooth', () =>
    expectPicture('chart-torque-m10', <TorqueChart model={torqueModel()} source={SOURCE} />));

  it('draws thick against thin work and where the chamfer outgrows it', () =>
    expectPicture('chart-torque-thin', <TorqueChart model={thinModel()} source={SOURCE} />));
});
