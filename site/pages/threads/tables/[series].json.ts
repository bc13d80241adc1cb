/** A series of threads as JSON, headed by source, edition and units. */

import type { APIRoute } from 'astro';
import { allSeries, type Series } from '../../../../components/reference/series';
import { seriesJson } from '../../../../components/reference/table';
import { SITE } from '../../../site';

export function getStaticPaths() {
  return allSeries().map((series) => ({ params: { series: series.slug }, props: { series } }));
}

export const GET: APIRoute<{ series: Series }> = ({ props }) =>
  new Response(seriesJson(props.series, SITE.version), {
    headers: { 'Content-Type': 'application/json; charset=utf-8' },
  });
