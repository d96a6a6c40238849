//! The few marks of SVG that a page of ours needs, in millimetres.

use std::fmt::Write as _;

/// A picture being drawn; `x` to the right and `y` downward from the upper left corner, in mm.
#[derive(Debug)]
pub(super) struct Svg {
    text: String,
}

/// Text as XML carries it.
fn escaped(text: &str) -> String {
    text.chars().fold(String::new(), |mut out, c| {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            c if c.is_control() => out.push(' '),
            // What XML 1.0 has no place for.
            '\u{FFFE}' | '\u{FFFF}' => out.push('?'),
            c => out.push(c),
        }
        out
    })
}

/// A thousandth of a millimetre is finer than any printer.
fn at(value: f64) -> String {
    let text = format!("{value:.3}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

impl Svg {
    /// An empty white sheet.
    pub(super) fn new(title: &str, width: f64, height: f64) -> Svg {
        let (title, w, h) = (escaped(title), at(width), at(height));
        let text = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{w}mm\" height=\"{h}mm\" viewBox=\"0 0 {w} {h}\" \
             font-family=\"sans-serif\">\n<title>{title}</title>\n\
             <rect width=\"{w}\" height=\"{h}\" fill=\"white\"/>\n"
        );
        Svg { text }
    }

    fn element(&mut self, element: std::fmt::Arguments<'_>) {
        // Writing into a String cannot fail.
        let _ = writeln!(self.text, "{element}");
    }

    /// Whatever follows, up to [`Svg::end`], is one thing with a name, drawn inside a frame.
    pub(super) fn begin_inside(&mut self, name: &str, [left, top, right, bottom]: [f64; 4]) {
        let (x, y, w, h) = (at(left), at(top), at(right - left), at(bottom - top));
        self.element(format_args!(
            "<clipPath id=\"{name}-frame\"><rect x=\"{x}\" y=\"{y}\" width=\"{w}\" height=\"{h}\"/></clipPath>"
        ));
        self.element(format_args!("<g id=\"{name}\" clip-path=\"url(#{name}-frame)\">"));
    }

    /// Whatever follows, up to [`Svg::end`], is one thing with a name.
    pub(super) fn begin(&mut self, name: &str) {
        self.element(format_args!("<g id=\"{name}\">"));
    }

    pub(super) fn end(&mut self) {
        self.text.push_str("</g>\n");
    }

    pub(super) fn text(&mut self, [x, y]: [f64; 2], size: f64, anchor: &str, text: &str) {
        let (x, y, size, text) = (at(x), at(y), at(size), escaped(text));
        self.element(format_args!(
            "<text x=\"{x}\" y=\"{y}\" font-size=\"{size}\" text-anchor=\"{anchor}\">{text}</text>"
        ));
    }

    /// A text along the vertical axis, read from below.
    pub(super) fn upright(&mut self, [x, y]: [f64; 2], size: f64, text: &str) {
        let (x, y, size, text) = (at(x), at(y), at(size), escaped(text));
        self.element(format_args!(
            "<text transform=\"translate({x} {y}) rotate(-90)\" font-size=\"{size}\" text-anchor=\"middle\">{text}</text>"
        ));
    }

    fn points(points: &[[f64; 2]]) -> String {
        points.iter().map(|[x, y]| format!("{},{}", at(*x), at(*y))).collect::<Vec<_>>().join(" ")
    }

    /// A line through points; `style` are SVG attributes.
    pub(super) fn line(&mut self, points: &[[f64; 2]], style: &str) {
        let points = Svg::points(points);
        self.element(format_args!("<polyline points=\"{points}\" fill=\"none\" {style}/>"));
    }

    pub(super) fn area(&mut self, points: &[[f64; 2]], fill: &str) {
        let points = Svg::points(points);
        self.element(format_args!("<polygon points=\"{points}\" fill=\"{fill}\"/>"));
    }

    pub(super) fn circle(&mut self, [x, y]: [f64; 2], radius: f64, style: &str) {
        let (x, y, r) = (at(x), at(y), at(radius));
        self.element(format_args!("<circle cx=\"{x}\" cy=\"{y}\" r=\"{r}\" {style}/>"));
    }

    pub(super) fn finish(mut self) -> String {
        self.text.push_str("</svg>\n");
        self.text
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_xml_would_misread_is_escaped() {
        let mut svg = Svg::new("a < b & \"c\"", 10.0, 5.0);
        svg.text([1.0, -0.000_1], 2.5, "start", "<script>\u{7}");
        let text = svg.finish();
        assert!(text.contains("<title>a &lt; b &amp; &quot;c&quot;</title>"), "{text}");
        assert!(
            text.contains("x=\"1\" y=\"0\" font-size=\"2.5\"") && text.contains("&lt;script&gt; </text>")
        );
    }
}
