type Given<Values> = { readonly [Key in keyof Values]: Exclude<Values[Key], undefined> };

/**
 * What was read of fields that are asked for where this is used, each by its name.
 *
 * @throws an Error that names those nothing was read of: then they aren't asked for after all
 */
export function needed<const Values extends object>(values: Values): Given<Values> {
  const missing = Object.entries(values).flatMap(([key, value]) =>
    value === undefined ? [key] : [],
  );
  if (missing.length > 0) throw new Error(`nothing was read of what is needed: ${missing}`);
  return values as Given<Values>;
}
