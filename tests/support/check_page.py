"""Reads a page of written rows as a screen reader would: tags in balance, the language said, headings
in order, a list of rows, every abbreviation explained. Judge: html.parser of the Python library."""
import re
import sys
from html.parser import HTMLParser

VOID = {"meta", "link", "br", "hr", "img"}


class Page(HTMLParser):
    def __init__(self):
        super().__init__()
        self.open, self.faults, self.headings, self.rows, self.terms = [], [], [], [], []
        self.lang = self.title = ""
        self.abbreviations, self.expanded = [], 0

    def handle_starttag(self, tag, attributes):
        attributes = dict(attributes)
        if tag == "html":
            self.lang = attributes.get("lang") or ""
        if tag == "abbr":
            self.abbreviations.append("")
            self.expanded += bool(attributes.get("title"))
        if tag in ("h1", "h2", "h3"):
            self.headings.append([tag, ""])
        if tag == "li":
            if self.open[-1] != "ol":
                self.faults.append("a row outside the list")
            self.rows.append("")
        if tag == "dt":
            self.terms.append("")
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            self.faults.append(f"</{tag}> out of balance")

    def handle_data(self, data):
        if "title" in self.open:
            self.title += data
        if self.open and self.open[-1] in ("h1", "h2", "h3"):
            self.headings[-1][1] += data
        if "li" in self.open:
            self.rows[-1] += data
        if "abbr" in self.open:
            self.abbreviations[-1] += data
        if "dt" in self.open:
            self.terms[-1] += data


def main(path):
    page = Page()
    page.feed(open(path, encoding="utf-8").read())
    page.close()
    faults = page.faults
    if page.open:
        faults.append(f"never closed: {page.open}")
    if not re.fullmatch(r"en-(US|GB)", page.lang):
        faults.append(f"language: {page.lang!r}")
    if not page.title.strip():
        faults.append("no title")
    if [tag for tag, _ in page.headings][:1] != ["h1"] or any(t == "h1" for t, _ in page.headings[1:]):
        faults.append(f"headings: {page.headings}")
    if not page.rows or any(not re.match(r"(Rows?|Rnds?) \d", row) for row in page.rows):
        faults.append(f"rows: {page.rows}")
    if page.expanded == 0 or any(not text.strip() for text in page.abbreviations):
        faults.append("abbreviations without text or title")
    known = [term.lower() for term in page.terms]
    stem = lambda word: re.sub(r"\d+$", "", word.split()[0].lower())
    for word in page.abbreviations:
        if word.lower() in ("knit", "purl"):
            continue
        if not any(stem(word) == stem(term) or word.lower() == term for term in known):
            faults.append(f"{word!r} is not explained")
    for fault in faults:
        print(f"{path}: {fault}")
    return bool(faults)


sys.exit(any([main(path) for path in sys.argv[1:]]))
