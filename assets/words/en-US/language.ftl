# The language itself.
language-name = English (United States)
