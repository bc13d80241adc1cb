/** What each work that travels with the handbook does in it. English. */

export const LICENCES = {
  head: 'The handbook itself is under the MIT licence. It carries these works of others.',
  works: {
    '@fontsource-variable/atkinson-hyperlegible-next': 'typeface Atkinson Hyperlegible Next',
    preact: 'draws what moves on a page',
    '@preact/signals': 'travels with Preact',
    '@preact/signals-core': 'travels with Preact',
    '@astrojs/preact': 'hands the moving parts of a page to Preact',
    astro: 'wakes the moving parts of a page',
    vite: 'fetches a page’s scripts ahead',
    rolldown: 'joins the scripts of a page',
    'd3-array': 'ticks of the charts',
    'd3-shape': 'lines and areas of the charts',
    'd3-path': 'travels with d3-shape',
    minisearch: 'index of the search',
    papaparse: 'tables of the tap drawer and the jobs',
    uqr: 'QR code of the job card',
    'workbox-precaching': 'keeps the handbook on the device',
    'workbox-core': 'travels with workbox-precaching',
    'workbox-routing': 'travels with workbox-precaching',
    'workbox-strategies': 'travels with workbox-precaching',
    valibot: 'checks what the device has stored',
  },
  /** Data, whose notices stand beside them in the repository: file, and what it is for. */
  data: {
    'test/published/data/threadlib-LICENSE.txt':
      'threadlib: sizes and limits of metric and pipe threads',
  },
};
