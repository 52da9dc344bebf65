/** A request as it travels to a worker, and an answer as it comes back: plain values and bytes. */
export interface CarriedRequest {
  readonly method: string
  readonly url: string
  readonly headers: readonly [string, string][]
  readonly body: ArrayBuffer | null
}

export interface CarriedAnswer {
  readonly status: number
  readonly headers: readonly [string, string][]
  readonly body: ArrayBuffer
}

export async function carryRequest(request: Request): Promise<CarriedRequest> {
  const { method, url, headers } = request
  const bare = method === 'GET' || method === 'HEAD'
  return { method, url, headers: [...headers], body: bare ? null : await request.arrayBuffer() }
}

export const requestOf = ({ method, url, headers, body }: CarriedRequest): Request =>
  new Request(url, { method, headers: headers as [string, string][], body })

export const carryAnswer = async (answer: Response): Promise<CarriedAnswer> => ({
  status: answer.status,
  headers: [...answer.headers],
  body: await answer.arrayBuffer(),
})

const WITHOUT_BODY = [101, 204, 205, 304]

/** Handed over as a view of the bytes: that is sent as it stands, where a buffer would be copied once more. */
export const answerOf = ({ status, headers, body }: CarriedAnswer): Response =>
  new Response(WITHOUT_BODY.includes(status) ? null : new Uint8Array(body), {
    status,
    headers: headers as [string, string][],
  })
