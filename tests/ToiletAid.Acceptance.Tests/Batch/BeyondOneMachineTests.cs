namespace ToiletAid.Acceptance.Tests.Batch;

public sealed class BeyondOneMachineTests
{
    [Fact]
    public async Task Pieces_that_GNU_parallel_ranks_are_together_the_single_run()
    {
        Tool.Require("parallel", "parallel");
        string single = Cli.Run(People.Ndjson, "rank", "-", "--format", "ndjson", "--samples", "500").Output;

        var (code, output, error) = await Tool.Run(
            People.Ndjson, "parallel", "--pipe", "-N", "7", "--keep-order", "-j", "2", Tool.Program, "rank", "-", "--format", "ndjson", "--samples", "500", "--jobs", "1");

        Assert.Equal((0, ""), (code, error));
        Assert.Equal(single, output);
    }

    [Fact]
    public void Pieces_of_the_file_as_the_tasks_of_an_array_job_take_them_are_together_the_single_run()
    {
        // As the README shows for Slurm: each task ranks a piece of the file of its own.
        string single = Cli.Run(People.Ndjson, "rank", "-", "--format", "ndjson", "--samples", "500").Output;

        var pieces = People.Lines.Chunk(10).Select(p => Cli.Run(string.Join('\n', p) + "\n", "rank", "-", "--format", "ndjson", "--samples", "500").Output);

        Assert.Equal(single, string.Concat(pieces));
    }
}
