// Applies the generated rules with json-rules-engine and times itself.
// Input (file named first): { attributes, rows, targets, columns, passes, rules }. Output (file named second):
// { milliseconds: one number for each pass, held: for each rule the rows for which it holds }.
import { readFileSync, writeFileSync } from 'node:fs'
import { Engine } from 'json-rules-engine'

const input = JSON.parse(readFileSync(process.argv[2], 'utf8'))
const operators = {
  AtLeast: 'greaterThanInclusive',
  AtMost: 'lessThanInclusive',
  Is: 'equal',
  OtherThan: 'notEqual'
}

const demand = test => test.kind === 'Called'
  ? { fact: 'called' + test.subject, operator: 'equal', value: true }
  : { fact: input.attributes[test.subject], operator: operators[test.kind], value: test.value }

function conditions (rule) {
  const all = [{ [rule.isAny ? 'any' : 'all']: rule.tests.map(demand) }]
  if (rule.also) all.push(demand(rule.also))
  if (rule.unless) all.push({ not: demand(rule.unless) })
  if (rule.onlyTarget >= 0) all.push({ fact: 'target', operator: 'equal', value: rule.onlyTarget })
  return { all }
}

// Rules of a lower level run first; what they call is added as a fact for the levels above.
const engine = new Engine([], { allowUndefinedFacts: true })
input.rules.forEach((rule, index) => engine.addRule({
  conditions: conditions(rule),
  event: { type: 'held', params: { index } },
  priority: 10 - rule.level,
  onSuccess: rule.fact < 0 ? undefined : (event, almanac) => { almanac.addRuntimeFact('called' + rule.fact, true) }
}))

function factsOf (row) {
  const facts = { target: input.targets[row] }
  input.attributes.forEach((name, attribute) => { facts[name] = input.columns[attribute][row] })
  return facts
}

async function pass () {
  const held = input.rules.map(() => [])
  const start = process.hrtime.bigint()
  for (let row = 0; row < input.rows; row++) {
    const { events } = await engine.run(factsOf(row))
    for (const event of events) held[event.params.index].push(row)
  }
  return { milliseconds: Number(process.hrtime.bigint() - start) / 1e6, held }
}

const milliseconds = []
let last
for (let i = 0; i < input.passes; i++) {
  last = await pass()
  milliseconds.push(last.milliseconds)
}
writeFileSync(process.argv[3], JSON.stringify({ milliseconds, held: last.held }))
