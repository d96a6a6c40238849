//! Text of a fixed width in plain ASCII.

/// Columns of a card.
const WIDTH: usize = 80;

/// A page being filled, line by line.
#[derive(Debug, Default)]
pub(super) struct Page {
    text: String,
}

/// What ASCII cannot show becomes a question mark, seen as such rather than lost.
fn ascii(text: &str) -> String {
    text.chars().map(|c| if c.is_ascii() && !c.is_ascii_control() { c } else { '?' }).collect()
}

impl Page {
    fn line(&mut self, line: &str) {
        self.text.push_str(line.trim_end());
        self.text.push('\n');
    }

    /// A full-width rule.
    pub(super) fn bar(&mut self, with: char) {
        self.line(&with.to_string().repeat(WIDTH));
    }

    /// A line that is known to fit.
    pub(super) fn plain(&mut self, text: &str) {
        self.wrapped("", text);
    }

    /// Left and right on one line, or on two where they do not fit.
    pub(super) fn split(&mut self, left: &str, right: &str) {
        let (left, right) = (ascii(left), ascii(right));
        if left.len() + right.len() + 2 > WIDTH {
            self.wrapped("", &left);
            self.wrapped("  ", &right);
        } else {
            self.line(&format!("{left}{right:>width$}", width = WIDTH - left.len()));
        }
    }

    /// A text behind a lead; further lines are indented as far as the lead is long. Words longer than a line are cut.
    pub(super) fn wrapped(&mut self, lead: &str, text: &str) {
        let mut lines = Self::broken(&ascii(text), WIDTH - lead.len()).into_iter();
        let first = lines.next().unwrap_or_default();
        self.line(&format!("{lead}{first}"));
        let indent = " ".repeat(lead.len());
        for line in lines {
            self.line(&format!("{indent}{line}"));
        }
    }

    /// Words with the spaces before them, none longer than the room.
    fn words(text: &str, room: usize) -> Vec<String> {
        let mut words: Vec<String> = Vec::new();
        let mut fresh = true;
        for c in text.chars() {
            match words.last_mut() {
                Some(word) if word.len() < room && (c != ' ' || fresh) => word.push(c),
                _ => words.push(c.to_string()),
            }
            fresh = c == ' ';
        }
        words
    }

    /// A gate: a row of one character across the full width, with a box to tick and the question in it.
    pub(super) fn gate(&mut self, with: char, tick: &str, text: &str) {
        let edge = with.to_string().repeat(4);
        let mut lead = if tick.is_empty() { format!("{edge} ") } else { format!("{edge} {tick} ") };
        for line in Self::broken(&ascii(text), WIDTH - lead.len() - edge.len() - 1) {
            let row = format!("{lead}{line} ");
            let rest = with.to_string().repeat(WIDTH - row.len());
            self.line(&format!("{row}{rest}"));
            // One gate has one box to tick, however many rows its question takes.
            lead = format!("{edge}{}", " ".repeat(lead.len() - edge.len()));
        }
    }

    fn broken(text: &str, room: usize) -> Vec<String> {
        let mut lines = vec![String::new()];
        for word in Self::words(text, room) {
            match lines.last_mut() {
                Some(line) if line.len() + word.len() <= room => line.push_str(&word),
                _ => lines.push(word.trim_start().to_owned()),
            }
        }
        lines
    }

    /// The page as text.
    pub(super) fn finish(self) -> String {
        self.text
    }
}
