/** What the compiler says of a cell, as tslab tells it: lines and characters counted from 0. */
export interface Complaint {
  start: { line: number; character: number };
  code: number;
  messageText: string;
}
