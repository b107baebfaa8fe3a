#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""validate.py SCHEMA FILE...: the JSON files against a JSON Schema of 2020-12.

Says for each file in a line what breaks the schema: "$.forces[0].name: minLength", the path and the keyword,
several parted by "; "; an empty line says that it is valid. The status is 0 wherever all files could be judged.
"""

import json
import sys

from jsonschema import Draft202012Validator


def read(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file)


def said(error):
    keywords = [word for word in error.absolute_schema_path if word == "propertyNames"]
    return f"{error.json_path}: {(keywords or [error.validator])[0]}"


def faults(validator, path):
    return "; ".join(sorted({said(error) for error in validator.iter_errors(read(path))}))


def main(schema_path, *paths):
    schema = read(schema_path)
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    for path in paths:
        print(faults(validator, path))


main(*sys.argv[1:])
