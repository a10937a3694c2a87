using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Migrations
{
    /// <inheritdoc />
    public partial class ProjectStates : Migration
    {
        // The column held 0 planning, 1 building, 2 finished, 3 archived, all set by hand. Of the states now, 3 is building and 5
        // done; a build of 0 says that the first start settles them by what is cut. A column is dropped by the statement itself:
        // the tool would build the table anew, outside the transaction.
        private const string Divide = """
            UPDATE "Projects" SET
                "IsArchived" = "State" = 3,
                "SetState" = CASE "State" WHEN 1 THEN 3 WHEN 2 THEN 5 END;
            ALTER TABLE "Projects" DROP COLUMN "State";
            """;

        private const string Gather = """
            UPDATE "Projects" SET "State" = CASE
                WHEN "IsArchived" THEN 3 WHEN "SetState" = 5 THEN 2 WHEN "SetState" IN (2, 3, 4) THEN 1 ELSE 0
            END;
            """;

        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(name: "Cuts", table: "Plans", type: "INTEGER", nullable: false, defaultValue: 0);

            migrationBuilder.AddColumn<int>(name: "ToBuy", table: "Plans", type: "INTEGER", nullable: false, defaultValue: 0);

            migrationBuilder.AddColumn<int>(
                name: "Build",
                table: "PlanProjects",
                type: "INTEGER",
                nullable: false,
                defaultValue: 1
            );

            migrationBuilder.AddColumn<bool>(
                name: "IsArchived",
                table: "Projects",
                type: "INTEGER",
                nullable: false,
                defaultValue: false
            );

            migrationBuilder.AddColumn<int>(
                name: "SetBuild",
                table: "Projects",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0
            );

            migrationBuilder.AddColumn<int>(
                name: "SetFrom",
                table: "Projects",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0
            );

            migrationBuilder.AddColumn<int>(name: "SetState", table: "Projects", type: "INTEGER", nullable: true);

            migrationBuilder.CreateTable(
                name: "PlanParts",
                columns: table => new
                {
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    RowId = table.Column<Guid>(type: "TEXT", nullable: false),
                    MaterialId = table.Column<string>(type: "TEXT", nullable: false),
                    Length = table.Column<long>(type: "INTEGER", nullable: false),
                    Width = table.Column<long>(type: "INTEGER", nullable: false),
                    Pieces = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanParts", x => new { x.PlanId, x.RowId });
                    table.ForeignKey(
                        name: "FK_PlanParts_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.Sql(Divide);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(name: "State", table: "Projects", type: "INTEGER", nullable: false, defaultValue: 0);
            migrationBuilder.Sql(Gather);
            migrationBuilder.DropTable(name: "PlanParts");
            migrationBuilder.DropColumn(name: "Cuts", table: "Plans");
            migrationBuilder.DropColumn(name: "ToBuy", table: "Plans");
            migrationBuilder.DropColumn(name: "Build", table: "PlanProjects");
            migrationBuilder.DropColumn(name: "IsArchived", table: "Projects");
            migrationBuilder.DropColumn(name: "SetBuild", table: "Projects");
            migrationBuilder.DropColumn(name: "SetFrom", table: "Projects");
            migrationBuilder.DropColumn(name: "SetState", table: "Projects");
        }
    }
}
