import { userInfo } from 'node:os';

/** Who is deciding: `COMMISSION_WHO`, else the name this computer knows the user by. @internal */
export function whoDecides(): string {
  const given = process.env.COMMISSION_WHO?.trim();
  if (given) return given;
  try {
    return userInfo().username;
  } catch {
    return 'unknown';
  }
}

/** A moment in the maker's own time, with its offset, so that its date is the date on the shop's calendar. @internal */
export function localTime(date: Date): string {
  const offset = -date.getTimezoneOffset();
  const local = new Date(date.getTime() + offset * 60_000).toISOString().slice(0, 19);
  const hours = String(Math.floor(Math.abs(offset) / 60)).padStart(2, '0');
  const minutes = String(Math.abs(offset) % 60).padStart(2, '0');
  return `${local}${offset < 0 ? '-' : '+'}${hours}:${minutes}`;
}
