/** The same two pages as a project of each framework, as its own guide sets one up, and nothing tuned. */

export interface Peer {
  name: string;
  packages: string[];
  files: Readonly<Record<string, string>>;
  build: string[];
  /** Where the built pages are, and under which address each stands. */
  out: string;
  pages: { lesson: string; calculator: string };
  /** The package whose version is the framework's. */
  versionOf: string;
}

const TITLE = 'Tapped holes';
const LESSON = 'Class and tap limits';
const CALCULATOR = 'Thread limits';
/** A front page, as every link to it must lead somewhere. */
const FRONT = '# Tapped holes\n';

const manifest = JSON.stringify({ private: true, type: 'module' });

/** A React or Preact component: a field, and the limits of what stands in it. */
const component = (hooks: string): string => `
import { useState } from '${hooks}';
import { limitsOf } from './limits.js';

export default function Limits() {
  const [thread, setThread] = useState('M8x1.25-6H');
  const { rows, problem } = limitsOf(thread);
  return (
    <form>
      <label>
        Thread <input type="text" value={thread} onInput={(event) => setThread(event.currentTarget.value)} />
      </label>
      <output>
        {problem && <p>{problem}</p>}
        <table>
          <caption>{rows.length > 0 ? 'Limits of the class' : ''}</caption>
          <tbody>{rows.map(([name, text]) => <tr key={name}><th scope="row">{name}</th><td>{text}</td></tr>)}</tbody>
        </table>
      </output>
    </form>
  );
}
`;

const vueComponent = `
<script setup>
import { computed, ref } from 'vue';
import { limitsOf } from './limits.js';
const thread = ref('M8x1.25-6H');
const said = computed(() => limitsOf(thread.value));
</script>

<template>
  <form>
    <label>Thread <input type="text" v-model="thread" /></label>
    <output>
      <p v-if="said.problem">{{ said.problem }}</p>
      <table>
        <caption>{{ said.rows.length > 0 ? 'Limits of the class' : '' }}</caption>
        <tbody>
          <tr v-for="[name, text] in said.rows" :key="name"><th scope="row">{{ name }}</th><td>{{ text }}</td></tr>
        </tbody>
      </table>
    </output>
  </form>
</template>
`;

const head = (title: string): string =>
  `---\ntitle: ${title}\ndescription: ${title} of tapped holes\n---\n\n`;

/** `prose` is the lesson in Markdown, `limits` the core's two functions as one file of plain script. */
export function peers(prose: string, limits: string): Peer[] {
  const inMdx = (from: string, attribute = '') => {
    const use = `import Limits from '${from}';\n\n<Limits${attribute} />\n`;
    return { lesson: `${head(LESSON)}${use}\n${prose}`, calculator: `${head(CALCULATOR)}${use}` };
  };
  const react = inMdx('@site/src/Limits.jsx');
  const preact = inMdx('../../Limits.jsx', ' client:load');
  const setup = `<script setup>\nimport Limits from './Limits.vue';\n</script>\n\n`;
  const vue = (title: string, body: string) =>
    `${head(title)}${setup}# ${title}\n\n<Limits />\n\n${body}`;
  return [
    {
      name: 'Docusaurus',
      packages: ['@docusaurus/core', '@docusaurus/preset-classic', 'react@19', 'react-dom@19'],
      versionOf: '@docusaurus/core',
      files: {
        // Its server side is built as CommonJS: no type here.
        'package.json': JSON.stringify({ private: true }),
        'docusaurus.config.js': `export default {
  title: '${TITLE}', url: 'http://localhost', baseUrl: '/', trailingSlash: true,
  presets: [['classic', { docs: { routeBasePath: '/' }, blog: false }]],
};\n`,
        'docs/index.md': `---\nslug: /\n---\n\n${FRONT}`,
        'docs/lesson.mdx': react.lesson,
        'docs/calculator.mdx': react.calculator,
        'src/Limits.jsx': component('react'),
        'src/limits.js': limits,
      },
      build: ['docusaurus', 'build'],
      out: 'build',
      pages: { lesson: '/lesson/', calculator: '/calculator/' },
    },
    {
      name: 'Starlight',
      packages: ['astro', '@astrojs/starlight', '@astrojs/preact', 'preact'],
      versionOf: '@astrojs/starlight',
      files: {
        'package.json': manifest,
        'astro.config.mjs': `import { defineConfig } from 'astro/config';
import preact from '@astrojs/preact';
import starlight from '@astrojs/starlight';
export default defineConfig({ site: 'http://localhost', integrations: [starlight({ title: '${TITLE}' }), preact()] });\n`,
        'src/content.config.ts': `import { defineCollection } from 'astro:content';
import { docsLoader } from '@astrojs/starlight/loaders';
import { docsSchema } from '@astrojs/starlight/schema';
export const collections = { docs: defineCollection({ loader: docsLoader(), schema: docsSchema() }) };\n`,
        'src/content/docs/index.md': `---\ntitle: ${TITLE}\n---\n\n${FRONT}`,
        'src/content/docs/lesson.mdx': preact.lesson,
        'src/content/docs/calculator.mdx': preact.calculator,
        'src/Limits.jsx': component('preact/hooks'),
        'src/limits.js': limits,
      },
      build: ['astro', 'build'],
      out: 'dist',
      pages: { lesson: '/lesson/', calculator: '/calculator/' },
    },
    {
      name: 'VitePress',
      packages: ['vitepress', 'vue'],
      versionOf: 'vitepress',
      files: {
        'package.json': manifest,
        '.vitepress/config.mjs': `export default { title: '${TITLE}', lang: 'en' };\n`,
        'index.md': FRONT,
        'lesson.md': vue(LESSON, prose),
        'calculator.md': vue(CALCULATOR, ''),
        'Limits.vue': vueComponent,
        'limits.js': limits,
      },
      build: ['vitepress', 'build'],
      out: '.vitepress/dist',
      pages: { lesson: '/lesson.html', calculator: '/calculator.html' },
    },
  ];
}
