using System.Collections.Immutable;
using System.Diagnostics;
using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;
using static ShopPlanner.Cutting.Tests.Formats.Documents;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>Documents made to hurt are refused with a clear fault, quickly and in bounded memory.</summary>
public sealed class HostileDocumentTests
{
    private const int Megabyte = 1 << 20;
    private static readonly TimeSpan Quick = TimeSpan.FromSeconds(10);

    [Theory]
    [InlineData("[", "]", "parts[0][0]…")]
    [InlineData("{\"a\":", "}", "parts.a.a…")]
    public void Ten_thousand_deep_is_one_fault(string open, string close, string path)
    {
        var nest = string.Concat(Enumerable.Repeat(open, 10_000)) + "1" + string.Concat(Enumerable.Repeat(close, 10_000));
        var fault = Assert.Single(Bounded(Encoding.UTF8.GetBytes("{\"parts\":" + nest + "}"), Megabyte));
        Assert.Equal((path, "is nested more than 64 deep"), (fault.Field, fault.Message));
    }

    [Fact]
    public void Sixty_four_deep_is_read_and_sixty_five_refused()
    {
        Assert.Empty(ReadRequest(Nested(63)).Faults);
        Assert.Equal("is nested more than 64 deep", Assert.Single(ReadRequest(Nested(64)).Faults).Message);
    }

    [Fact]
    public void Fifty_megabytes_of_text_is_refused_for_the_one_member()
    {
        var json = Request.With("\"Leg\"", "\"" + new string('x', 50 * Megabyte) + "\"");
        var fault = Assert.Single(Bounded(Encoding.UTF8.GetBytes(json), 128 * Megabyte));
        Assert.Equal(("parts[0].name", "is too long: write one line"), (fault.Field, fault.Message));
        Assert.True(fault.Value.Length <= 61);
    }

    [Fact]
    public void Fifty_megabytes_of_digits_is_refused_for_the_one_member()
    {
        var json = Request.With("\"34 1/2\"", new string('9', 50 * Megabyte));
        Assert.Equal("parts[0].length", Assert.Single(Bounded(Encoding.UTF8.GetBytes(json), 128 * Megabyte)).Field);
    }

    [Fact]
    public void Fifty_megabytes_of_numbers_is_refused_before_a_document_is_built()
    {
        var json = Request.With(
            "\"in\",",
            "\"in\", \"noise\": [" + string.Concat(Enumerable.Repeat("1,", 25 * Megabyte)) + "1],"
        );
        Assert.Equal(
            "has more than 5,000,000 values, more than any cutting job",
            Assert.Single(Bounded(Encoding.UTF8.GetBytes(json), Megabyte)).Message
        );
    }

    [Fact]
    public void Fifty_megabytes_of_ignored_text_is_read()
    {
        var json = Request.With("\"in\",", "\"in\", \"noise\": \"" + new string('x', 50 * Megabyte) + "\",");
        Assert.Empty(Bounded(Encoding.UTF8.GetBytes(json), 128 * Megabyte));
    }

    [Fact]
    public void Four_hundred_thousand_parts_are_refused_by_their_number()
    {
        var json = Request.With(
            "\"parts\": [",
            "\"parts\": ["
                + string.Concat(
                    Enumerable.Repeat(
                        "{\"id\":\"A\",\"material\":\"pine-1x3\",\"length\":34.5,\"quantity\":1,\"name\":\"a part with a long name, one of very many parts of the very same kind\"},",
                        400_000
                    )
                )
        );
        Assert.True(json.Length > 48 * Megabyte);
        var fault = Assert.Single(Bounded(Encoding.UTF8.GetBytes(json), 256 * Megabyte));
        Assert.Equal(("parts", "400002"), (fault.Field, fault.Value));
    }

    [Fact]
    public void More_than_64_megabytes_are_not_taken_from_a_stream()
    {
        using var endless = new EndlessStream();
        Assert.Equal(
            "is larger than 64 MB, more than any cutting job",
            Assert.Single(CutRequestJson.Read(endless).Faults).Message
        );
        Assert.InRange(endless.Given, 64L * Megabyte, 65L * Megabyte);
    }

    [Fact]
    public void Too_many_members_of_an_object_are_refused()
    {
        var many = string.Concat(Enumerable.Range(0, 2000).Select(i => $"\"m{i}\": 0, "));
        Assert.Contains(
            ReadRequest(Request.With("\"kerf\"", many + "\"kerf\"")).Faults,
            fault => fault.Field == "saw" && fault.Message == "has more than 1000 members"
        );
    }

    private static ImmutableArray<Fault> Bounded(byte[] utf8, long mostBytes)
    {
        var (before, watch) = (GC.GetAllocatedBytesForCurrentThread(), Stopwatch.StartNew());
        var faults = CutRequestJson.Read(utf8).Faults;
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, Quick);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, mostBytes);
        return faults;
    }

    private static string Nested(int levels) =>
        Request.With("\"in\",", "\"in\", \"noise\": " + new string('[', levels) + new string(']', levels) + ",");

    /// <summary>Spaces without end.</summary>
    private sealed class EndlessStream : Stream
    {
        public long Given { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => Given;
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count)
        {
            buffer.AsSpan(offset, count).Fill((byte)' ');
            Given += count;
            return count;
        }

        public override void Flush() => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
