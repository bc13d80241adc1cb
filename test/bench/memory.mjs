// Loaded before a program that is measured: on its way out it says how much memory it held at most.
process.on('exit', () => {
  process.stderr.write(`max-rss-kb=${process.resourceUsage().maxRSS}\n`);
});
