import type { Context } from 'hono'
import { z } from 'zod'
import {
  adviceSchema,
  briefSchema,
  compareRequestSchema,
  comparisonSchema,
  fragmentAnswerSchema,
  fragmentRequestSchema,
  lineProductSchema,
  linesRequestSchema,
  linesSummarySchema,
  planRequestSchema,
  planSchema,
  runsAnswerSchema,
  runsRequestSchema,
} from '../../contract/index.ts'
import { reportDataSchema } from '../../report/report-data.ts'
import { version } from '../version.ts'

const problemsSchema = z
  .object({ problems: z.array(z.object({ path: z.string(), message: z.string() })) })
  .meta({ id: 'Problems', description: 'What is wrong, and where' })

type Schema = Record<string, unknown>

/** zod's own JSON schema (2020-12, as OpenAPI 3.1 takes it), its definitions moved to the document's. */
function definitions(schema: z.ZodType, io: 'input' | 'output'): Schema {
  const { $defs = {} } = z.toJSONSchema(schema, { io }) as { $defs?: Schema }
  return JSON.parse(JSON.stringify($defs).replaceAll('"#/$defs/', '"#/components/schemas/')) as Schema
}

const json = (name: string) => ({
  'application/json': { schema: { $ref: `#/components/schemas/${name}` } },
})

const refused = (description: string) => ({ description, content: json('Problems') })

/** Every worker has its queue full, or the work took longer than a request may. */
const BUSY = {
  ...refused('Too much at once, or too long: ask again after the seconds the header says'),
  headers: { 'Retry-After': { schema: { type: 'integer' } } },
}

/** The API in its own words, from the schemas that check it. */
export const openapi = {
  openapi: '3.1.0',
  info: {
    title: 'gritwise',
    version,
    description: 'From a brief of a food line to sourced advice on finding hard foreign bodies.',
  },
  paths: {
    '/api/advice': {
      post: {
        operationId: 'advise',
        summary: 'Advice on a brief',
        requestBody: { required: true, content: json('Brief') },
        responses: {
          200: { description: 'The advice', content: json('Advice') },
          400: refused('The body is not readable JSON'),
          413: refused('The body is too large'),
          415: refused('The body is not application/json'),
          422: refused('The brief has problems'),
          503: BUSY,
        },
      },
    },
    '/api/card': {
      post: {
        operationId: 'card',
        summary:
          'Simulated test-card radiographs of a brief: pictures as base64 PNG, and what was read from them',
        parameters: ['seed', 'point', 'machine', 'placement', 'taught'].map((name) => ({
          name,
          in: 'query',
          required: false,
          schema: { type: 'string' },
        })),
        requestBody: { required: true, content: json('Brief') },
        responses: {
          200: { description: 'The card', content: { 'application/json': { schema: { type: 'object' } } } },
          400: refused('The body is not readable JSON'),
          413: refused('The body is too large'),
          415: refused('The body is not application/json'),
          422: refused('The brief, or what was asked of the card, has problems'),
          503: BUSY,
        },
      },
    },
    '/api/compare': {
      post: {
        operationId: 'compare',
        summary: 'Machines side by side, or one pack against another: only what differs',
        requestBody: { required: true, content: json('CompareRequest') },
        responses: {
          200: { description: 'The comparison', content: json('Comparison') },
          400: refused('The body is not readable JSON'),
          413: refused('The body is too large'),
          415: refused('The body is not application/json'),
          422: refused('A brief, or what was asked of the comparison, has problems'),
          503: BUSY,
        },
      },
    },
    '/api/fragment': {
      post: {
        operationId: 'fragment',
        summary: 'Would we have found this? Chance of finding a found piece at each point and machine',
        requestBody: { required: true, content: json('FragmentRequest') },
        responses: {
          200: { description: 'The chances, with what they rest on', content: json('FragmentAnswer') },
          400: refused('The body is not readable JSON'),
          413: refused('The body is too large'),
          415: refused('The body is not application/json'),
          422: refused('The brief or the fragment has problems'),
          503: BUSY,
        },
      },
    },
    '/api/report': {
      post: {
        operationId: 'report',
        summary: 'The report that a kept JSON made, byte for byte; refused under other versions',
        requestBody: { required: true, content: json('ReportData') },
        responses: {
          200: {
            description: 'One self-contained document',
            content: { 'text/html': { schema: { type: 'string' } } },
          },
          400: refused('The body is not readable JSON'),
          413: refused('The body is too large'),
          415: refused('The body is not application/json'),
          422: refused('The JSON has problems, or other versions made it'),
          503: BUSY,
        },
      },
    },
    '/api/runs': {
      post: {
        operationId: 'runs',
        summary: 'Test runs on the product: what was shown, with its confidence, and against the prediction',
        requestBody: { required: true, content: json('RunsRequest') },
        responses: {
          200: { description: 'The trial as read', content: json('RunsAnswer') },
          400: refused('The body is not readable JSON'),
          413: refused('The body is too large'),
          415: refused('The body is not application/json'),
          422: refused('The runs or the brief have problems; nothing was read'),
          503: BUSY,
        },
      },
    },
    '/api/plan': {
      post: {
        operationId: 'plan',
        summary: 'Which pieces, how many and where, to show a size on the product',
        requestBody: { required: true, content: json('PlanRequest') },
        responses: {
          200: { description: 'The plan', content: json('Plan') },
          400: refused('The body is not readable JSON'),
          413: refused('The body is too large'),
          415: refused('The body is not application/json'),
          422: refused('The brief, or what was asked of the plan, has problems'),
          503: BUSY,
        },
      },
    },
    '/api/lines': {
      post: {
        operationId: 'lines',
        summary: 'Many products: a table in, each product as it is worked out, the summary of the lines last',
        requestBody: {
          required: true,
          content: { ...json('LinesRequest'), 'text/csv': { schema: { type: 'string' } } },
        },
        responses: {
          200: {
            description:
              'A JSON value a line: { product } for each row in its order, then { summary }; CSV where Accept says text/csv',
            content: {
              'application/x-ndjson': {
                schema: {
                  anyOf: ['LineProduct', 'LinesSummary'].map((name) => ({
                    $ref: `#/components/schemas/${name}`,
                  })),
                },
              },
              'text/csv': { schema: { type: 'string' } },
            },
          },
          400: refused('The body is not readable'),
          413: refused('The body is too large'),
          415: refused('The body is neither application/json nor text/csv'),
          422: refused('The table as a whole, or the brief, has problems; rows say theirs one by one'),
        },
      },
    },
    '/api/openapi.json': {
      get: {
        operationId: 'describe',
        summary: 'This description',
        responses: { 200: { description: 'OpenAPI 3.1', content: { 'application/json': { schema: {} } } } },
      },
    },
  },
  components: {
    schemas: {
      ...definitions(z.object({ problems: problemsSchema }), 'output'),
      ...definitions(z.object({ advice: adviceSchema }), 'output'),
      ...definitions(z.object({ brief: briefSchema }), 'input'),
      ...definitions(z.object({ request: compareRequestSchema }), 'input'),
      ...definitions(z.object({ answer: comparisonSchema }), 'output'),
      ...definitions(z.object({ request: fragmentRequestSchema }), 'input'),
      ...definitions(z.object({ answer: fragmentAnswerSchema }), 'output'),
      ...definitions(z.object({ report: reportDataSchema }), 'input'),
      ...definitions(z.object({ request: runsRequestSchema }), 'input'),
      ...definitions(z.object({ answer: runsAnswerSchema }), 'output'),
      ...definitions(z.object({ request: planRequestSchema }), 'input'),
      ...definitions(z.object({ plan: planSchema }), 'output'),
      ...definitions(z.object({ request: linesRequestSchema }), 'input'),
      ...definitions(z.object({ product: lineProductSchema, summary: linesSummarySchema }), 'output'),
    },
  },
}

export const openapiDocument = (c: Context) => c.json(openapi)
