import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from 'node:crypto'

/** Cost of guessing a password: 32 MB and some tenths of a second a try (N = 2^15, r = 8, p = 1; RFC 7914 names the parameters). */
const COST = { N: 2 ** 15, r: 8, p: 1 }
const BYTES = 32

const derive = (password: string, salt: Buffer, { N, r, p }: typeof COST): Promise<Buffer> => {
  const options: ScryptOptions = { N, r, p, maxmem: 256 * N * r }
  return new Promise((resolve, reject) =>
    scrypt(password.normalize('NFC'), salt, BYTES, options, (error, key) =>
      error ? reject(error) : resolve(key),
    ),
  )
}

/** What is kept of a password: "scrypt$N$r$p$salt$key". */
export async function secretOf(password: string, cost = COST): Promise<string> {
  const salt = randomBytes(16)
  const key = await derive(password, salt, cost)
  return ['scrypt', cost.N, cost.r, cost.p, salt.toString('base64url'), key.toString('base64url')].join('$')
}

/** Compared for names that are not known, so that they take as long as those that are. */
const NOBODYS = `scrypt$${COST.N}$${COST.r}$${COST.p}$${'A'.repeat(22)}$${'A'.repeat(43)}`

/** Whether a password is the one kept; an empty secret fits none. */
export async function fits(password: string, secret: string): Promise<boolean> {
  const [, N, r, p, salt, key] = (secret || NOBODYS).split('$')
  const kept = Buffer.from(key ?? '', 'base64url')
  const given = await derive(password, Buffer.from(salt ?? '', 'base64url'), {
    N: Number(N),
    r: Number(r),
    p: Number(p),
  })
  return secret !== '' && kept.length === given.length && timingSafeEqual(kept, given)
}
