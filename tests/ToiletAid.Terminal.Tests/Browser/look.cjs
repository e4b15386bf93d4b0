// Opens every HTML file of a folder in Chromium and says what a reader would meet. Usage: node look.cjs MODULES FOLDER
const fs = require('fs');
const path = require('path');
const [modules, folder] = process.argv.slice(2);
const { chromium } = require(path.join(modules, 'node_modules/playwright-core'));
const axe = fs.readFileSync(path.join(modules, 'node_modules/axe-core/axe.min.js'), 'utf8');

// Reflow at 400 percent of a window 1280 wide is a page 320 wide: WCAG 2.2, success criterion 1.4.10.
const widths = { full: 1280, zoomed: 320 };

async function look(browser, name) {
  const seen = { name, violations: [], sideways: [], requests: 0 };
  const page = await browser.newPage();
  page.on('request', () => seen.requests++);
  await page.goto('file://' + path.join(folder, name));
  for (const [zoom, width] of Object.entries(widths)) {
    await page.setViewportSize({ width, height: 800 });
    if (await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth)) seen.sideways.push(zoom);
  }
  await page.setViewportSize({ width: widths.full, height: 800 });
  for (const format of ['A4', 'Letter']) await page.pdf({ path: path.join(folder, `${name}.${format}.pdf`), format });
  await page.evaluate(axe);
  const result = await page.evaluate(() => window.axe.run(document, { resultTypes: ['violations', 'passes'] }));
  seen.violations = result.violations.map(v => `${v.id}: ${v.nodes.map(n => n.html.slice(0, 80)).join(' ')}`);
  seen.rules = result.passes.length;
  await page.close();
  return seen;
}

(async () => {
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
  });
  const seen = [];
  for (const name of fs.readdirSync(folder).filter(f => f.endsWith('.html')).sort()) seen.push(await look(browser, name));
  await browser.close();
  console.log(JSON.stringify(seen));
})().catch(e => { console.error(e); process.exit(1); });
