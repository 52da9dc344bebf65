/** What a form sends without showing it. */
export function HiddenFields({ fields }: { fields: Readonly<Record<string, string>> }) {
  return (
    <>
      {Object.entries(fields).map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
    </>
  )
}
