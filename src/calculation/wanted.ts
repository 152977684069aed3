/**
 * The value of a field that what is chosen asks for, and that was read for it.
 *
 * Throws where it wasn't: then a condition of the fields and what uses them differ.
 */
export function wanted<Input extends object, Key extends keyof Input & string>(
  read: Input,
  key: Key,
): Exclude<Input[Key], undefined> {
  const value = read[key];
  if (value === undefined) throw new Error(`${key} is wanted, and was not asked for`);
  return value as Exclude<Input[Key], undefined>;
}
