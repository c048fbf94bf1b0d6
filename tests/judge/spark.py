"""Judges examinations as a stage of a Spark job on a cluster of two processes: python spark.py PLUGWARY.

The answers must be those of the command alone, and its exit code must count as DEVELOPERS.md says.
"""

import json
import os
import shlex
import shutil
import subprocess
import sys
from pathlib import Path

import pyspark
from py4j.protocol import Py4JJavaError
from pyspark import SparkConf, SparkContext

# The Spark that comes with the library and no other; on this machine, where nobody else is to see it.
SPARK_HOME = Path(pyspark.__file__).parent
os.environ |= {"SPARK_HOME": str(SPARK_HOME), "SPARK_LOCAL_IP": "127.0.0.1", "PYSPARK_PYTHON": sys.executable}

COUNT = 2000
PARTITIONS = 8


def examinations():
    """Every examination of the tests, again and again, each under an id of its own and on a line of its own."""
    cases = [json.loads(path.read_text("utf-8")) for path in sorted(Path("tests/examinations/cases").glob("*.json"))]
    return [json.dumps(cases[number % len(cases)] | {"id": f"{number:032x}"}) for number in range(COUNT)]


def fails(job):
    """Whether the job is stopped by an exit code, after four tries."""
    try:
        job.collect()
    except Py4JJavaError as error:
        return "failed 4 times" in str(error) and "Pipe function" in str(error)
    return False


def check(what, holds):
    print(f"{'holds' if holds else 'DOES NOT HOLD':<14}{what}")
    return holds


def checks(spark, command):
    good = examinations()
    text = "\n".join(good)
    alone = subprocess.run([command, "judge"], input=text, encoding="utf-8", stdout=subprocess.PIPE, check=True)
    expected = alone.stdout.splitlines()
    judge = f"{shlex.quote(command)} judge"
    stream = spark.parallelize(good, PARTITIONS)
    folders = set(stream.mapPartitions(lambda _: [os.getcwd()]).collect())
    yield check("both processes of the cluster have work", len(folders) == 2)
    answers = stream.pipe(judge, checkCode=True).collect()
    yield check("the answers are those of one command alone, in their order", answers == expected)

    bad = COUNT // 2
    mixed = spark.parallelize(good[:bad] + ["nonsense"] + good[bad + 1 :], PARTITIONS)
    yield check("a bad line stops a job that looks at exit codes", fails(mixed.pipe(judge, checkCode=True)))
    without = expected[:bad] + expected[bad + 1 :]
    yield check("a job that does not look loses the line", mixed.pipe(judge).collect() == without)
    one_for_one = f"sh -c {shlex.quote(f'{judge} --one-for-one || test $? -eq 2')}"
    answers = mixed.pipe(one_for_one, checkCode=True).collect()
    unread = [number for number, answer in enumerate(answers) if "unread" in json.loads(answer)]
    yield check("one for one, the line has its place", unread == [bad] and answers[:bad] + answers[bad + 1 :] == without)
    absent = one_for_one.replace(command, f"{command}-absent")
    yield check("a command that cannot run stops that job all the same", fails(mixed.pipe(absent, checkCode=True)))


def main():
    [command] = sys.argv[1:]
    conf = SparkConf().setMaster("local-cluster[2,1,1024]").setAppName("plugwary").set("spark.ui.enabled", "false")
    spark = SparkContext(conf=conf.set("spark.ui.showConsoleProgress", "false"))
    # A task that fails on purpose is no news.
    spark.setLogLevel("OFF")
    logs = SPARK_HOME / "work" / spark.applicationId
    try:
        holds = list(checks(spark, os.path.abspath(command)))
    finally:
        spark.stop()
        shutil.rmtree(logs, ignore_errors=True)
    sys.exit(0 if all(holds) else 1)


main()
