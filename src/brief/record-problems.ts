import { ANSWER_KEYS, type BriefInput, type Problem } from '../contract/index.ts'
import { nearestWord } from './nearest.ts'

const quoted = (given: string) => JSON.stringify(given)
const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase()

/** What is wrong with finds, entries, places in the flow and answers: each names the thing that does not exist. */
export function recordProblems(given: BriefInput): Problem[] {
  return [
    ...stepProblems(given),
    ...findProblems(given),
    ...answerProblems(given),
    ...trialProblems(given),
    ...rowProblems(given),
  ]
}

/** Steps named by points and contaminants are steps of the flow, where the brief has one. */
function stepProblems({ flow = [], points, contaminants }: BriefInput): Problem[] {
  const steps = flow.map(({ step }) => step)
  const problem = (path: string, name: string): Problem[] => {
    if (steps.length === 0 || steps.some((step) => same(step, name))) return []
    const near = nearestWord(name, steps)
    return [
      {
        path,
        message: `${quoted(name)} is no step of the flow; ${near ? `did you mean ${quoted(near)}?` : `its steps: ${steps.join(', ')}`}`,
      },
    ]
  }
  return [
    ...points.flatMap(({ afterStep }, i) => (afterStep ? problem(`points.${i}.afterStep`, afterStep) : [])),
    ...contaminants.flatMap(({ entries = [] }, c) => {
      const total = entries.reduce((sum, { share }) => sum + (share ?? 0), 0)
      const over: Problem[] =
        total > 1 + 1e-9
          ? [
              {
                path: `contaminants.${c}.entries`,
                message: `the shares add up to ${Number(total.toPrecision(4))}; together they are at most 1`,
              },
            ]
          : []
      return [
        ...entries.flatMap(({ step }, i) => problem(`contaminants.${c}.entries.${i}.step`, step)),
        ...over,
      ]
    }),
  ]
}

function findProblems({ finds = [], points, contaminants }: BriefInput): Problem[] {
  const names = points.flatMap(({ name }) => (name === undefined ? [] : [name]))
  return finds.flatMap((find, i): Problem[] => {
    const problems: Problem[] = []
    if (find.contaminant >= contaminants.length)
      problems.push({
        path: `finds.${i}.contaminant`,
        message: `the brief has contaminants 0 to ${contaminants.length - 1}; ${find.contaminant} was given`,
      })
    if (find.point !== undefined && !names.includes(find.point))
      problems.push({
        path: `finds.${i}.point`,
        message: `${quoted(find.point)} is no inspection point of this brief; it has ${names.join(', ')}`,
      })
    if (find.found > find.packs)
      problems.push({
        path: `finds.${i}.found`,
        message: `at most as many as the packs inspected (${find.packs}); ${find.found} was given`,
      })
    if (find.events !== undefined && (find.events > find.found || (find.events === 0 && find.found > 0)))
      problems.push({
        path: `finds.${i}.events`,
        message: `events are 1 to the number of pieces found (${find.found}); ${find.events} was given`,
      })
    return problems
  })
}

/** Trials speak of points and contaminants that the brief has. */
function trialProblems({ measured = [], demonstrated = [], points, contaminants }: BriefInput): Problem[] {
  const names = points.flatMap(({ name }) => (name === undefined ? [] : [name]))
  const lists = [
    ['measured', measured],
    ['demonstrated', demonstrated],
  ] as const
  return lists.flatMap(([list, records]) =>
    records.flatMap(({ point, contaminant }, i): Problem[] => [
      ...(contaminant === undefined || contaminant < contaminants.length
        ? []
        : [
            {
              path: `${list}.${i}.contaminant`,
              message: `the brief has contaminants 0 to ${contaminants.length - 1}; ${contaminant} was given`,
            },
          ]),
      ...(names.includes(point)
        ? []
        : [
            {
              path: `${list}.${i}.point`,
              message: `${quoted(point)} is no inspection point of this brief; it has ${names.join(', ')}`,
            },
          ]),
    ]),
  )
}

/** A row about one piece has its constants; one about the machine alone has a clean run. */
function rowProblems({ measured = [] }: BriefInput): Problem[] {
  return measured.flatMap(({ contaminant, constants, cleanRun }, i): Problem[] => {
    const at = `measured.${i}`
    if ((contaminant === undefined) !== (constants === undefined))
      return [
        contaminant === undefined
          ? {
              path: `${at}.contaminant`,
              message: 'name the contaminant that these constants were measured with',
            }
          : {
              path: `${at}.constants`,
              message: 'give what the trial with this contaminant made of the prediction',
            },
      ]
    if (contaminant === undefined && (cleanRun === undefined || cleanRun.packs === 0))
      return [
        {
          path: `${at}.cleanRun`,
          message: 'a row without a contaminant gives a clean run of 1 pack or more',
        },
      ]
    if (cleanRun && cleanRun.rejects > cleanRun.packs)
      return [
        {
          path: `${at}.cleanRun.rejects`,
          message: `at most as many as the clean packs (${cleanRun.packs}); ${cleanRun.rejects} was given`,
        },
      ]
    return []
  })
}

const FORMS = 'c0.severity, c0.p1.q5, p1.interval, plant.days, site.…'

function answerProblems({ answers = [], points, contaminants }: BriefInput): Problem[] {
  return answers.flatMap(({ question }, i): Problem[] => {
    const wrong = (message: string): Problem[] => [{ path: `answers.${i}.question`, message }]
    if (answers.findIndex((other) => other.question === question) !== i)
      return wrong(`${quoted(question)} is answered twice; keep one answer`)
    if (/^site\.[a-z0-9-]+$/.test(question)) return []
    const read = /^(?:(plant)|(?:c(\d+))?\.?(?:p(\d+))?)\.([a-z0-9-]+)$/.exec(question)
    const [, plant, contaminant, point, key = ''] = read ?? []
    if (!read || (!plant && contaminant === undefined && point === undefined))
      return wrong(`${quoted(question)} is no question of the register; questions look like ${FORMS}`)
    if (contaminant !== undefined && Number(contaminant) >= contaminants.length)
      return wrong(`the brief has contaminants 0 to ${contaminants.length - 1}; c${contaminant} was given`)
    if (point !== undefined && Number(point) >= points.length)
      return wrong(`the brief has inspection points 0 to ${points.length - 1}; p${point} was given`)
    const kind = plant ? 'plant' : contaminant === undefined ? 'p' : point === undefined ? 'c' : 'cp'
    const keys: readonly string[] = ANSWER_KEYS[kind]
    return keys.includes(key) ? [] : wrong(`${quoted(key)} is not asked there; asked: ${keys.join(', ')}`)
  })
}
